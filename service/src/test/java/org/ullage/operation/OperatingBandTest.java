package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/** The normal swing as a band: 625 L at 0 degC and 1 bar, 100 L charged to 0.5 bar, air at 1 bar. */
class OperatingBandTest {

    private static final OperatingCurve CURVE = loop(
                    625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0.5)), reading(1, 0))
            .curve();
    private static final Temperature COLD = Temperature.celsius(0);
    private static final Temperature HOT = Temperature.celsius(80);

    private static OperatingTolerances tolerances(double percent, double chargeBar, double fillBar) {
        return new OperatingTolerances(
                VolumeFraction.percent(percent), PressureDifference.bar(chargeBar), PressureDifference.bar(fillBar));
    }

    private static OperatingBand band(double percent, double chargeBar, double fillBar) {
        return OperatingBand.around(CURVE, tolerances(percent, chargeBar, fillBar));
    }

    @Test
    void byHand() {
        // 10 % more: 27.5 L, 150 / 47.5 bar abs; 10 % less: 22.5 L
        OperatingBand contents = band(10, 0, 0);
        assertThat(contents.highest(HOT).pressure().in(Units.BAR)).isCloseTo(150 / 47.5 - 1, within(1e-9));
        assertThat(contents.lowest(HOT).pressure().in(Units.BAR)).isCloseTo(150 / 52.5 - 1, within(1e-9));
        // charge 1.4 bar abs: 140 L bar of gas, 70 L at the fill
        assertThat(band(0, 0.1, 0).highest(HOT).pressure().in(Units.BAR)).isCloseTo(140 / 45.0 - 1, within(1e-9));
        assertThat(band(0, 0, 0.1).lowest(COLD).pressure().in(Units.BAR)).isCloseTo(0.9, within(1e-9));
        assertThat(contents.text(COLD, HOT, UnitSystem.SI)).isEqualTo("""
                lowest   0 degC: 1 bar, 25 L in the vessels; 80 degC: 1.86 bar, 47.5 L in the vessels
                highest  0 degC: 1 bar, 25 L in the vessels; 80 degC: 2.16 bar, 52.5 L in the vessels
                A change of pressure with temperature alone is no sign of failure.
                """);
    }

    @Test
    void readingsInsideAndOutside() {
        OperatingBand band = band(10, 0.1, 0.1);
        assertThat(band.contains(new Reading(CURVE.pressure(HOT), HOT))).isTrue();
        assertThat(band.contains(reading(2.9, 80))).isFalse();
        assertThat(band.contains(new Reading(band.highest(HOT).pressure(), HOT)))
                .as("upper edge")
                .isTrue();
        assertThat(band.contains(new Reading(band.lowest(HOT).pressure(), HOT)))
                .as("lower edge")
                .isTrue();
        assertThat(band.contains(reading(1.2, 80))).isFalse();
    }

    @Test
    void theLowestMayBeEmptyAndTheHighestFull() {
        OperatingBand band = band(0, 0.6, 0);
        assertThat(band.lowest(Temperature.celsius(-2)).state()).isEqualTo(LoopState.VESSELS_EMPTY);
        assertThat(band.contains(reading(-0.3, -2))).isTrue();
        OperatingCurve small = loop(625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 30, 0.5)), reading(1, 0))
                .curve();
        OperatingBand full = new OperatingBand(List.of(CURVE, small));
        assertThat(full.highest(HOT).state()).isEqualTo(LoopState.LIQUID_FULL);
        assertThat(full.contains(reading(20, 80))).isTrue();
        assertThat(full.contains(reading(1, 80))).isFalse();
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> new OperatingBand(List.of())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tolerances(100, 0, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tolerances(0, -1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> tolerances(0, 0, -1)).isInstanceOf(OutOfRangeException.class);
    }
}
