package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import org.junit.jupiter.api.Test;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** One of two vessels shut off: 625 L at 0 degC and 1 bar, 0.3125 L for each kelvin, air at 1 bar. */
class ServiceIsolationTest {

    private static final OperatingCurve BOTH = loop(
                    625,
                    PipeMaterial.RIGID,
                    TestFluid.WATER,
                    bank(vessel("A", 60, 0.5), vessel("B", 40, 0.5)),
                    reading(1, 0))
            .curve();

    @Test
    void byHand() {
        GaugePressure limit = GaugePressure.bar(2);
        ServiceIsolation isolation = ServiceIsolation.of(BOTH, "B", Temperature.celsius(0), limit);
        // 60 L alone: 45 L of gas at 2 bar abs; at 3 bar abs 30 L, so 15 L, 48 K
        assertThat(isolation.warmest().in(Units.CELSIUS)).isCloseTo(48, within(1e-6));
        assertThat(isolation.at(Temperature.celsius(48)).pressure().in(Units.BAR))
                .isCloseTo(2, within(1e-9));
        assertThat(isolation.text(UnitSystem.SI))
                .isEqualTo("with B shut off run no warmer than 48 degC to keep below 2 bar");
    }

    @Test
    void shutOffWarm() {
        // Both at 80 degC and 2 bar; A holds 30 L at 3 bar abs: 15 L from the fill and 15 L that came in, 15/1.04 kg.
        // Cooling to
        // 40 degC the loop takes 625 (1/1.02 - 1/1.04) kg of that back; the rest has 1.02 L/kg.
        OperatingCurve rest = BOTH.isolating("B", Temperature.celsius(80));
        assertThat(rest.pressure(Temperature.celsius(80)).in(Units.BAR)).isCloseTo(2, within(1e-9));
        double water = 15 + 1.02 * (15 / 1.04 - 625 * (1 / 1.02 - 1 / 1.04));
        assertThat(rest.pressure(Temperature.celsius(40)).in(Units.BAR)).isCloseTo(90 / (60 - water) - 1, within(1e-9));
    }

    @Test
    void enoughWithout() {
        OperatingCurve small = BOTH.inUse()
                .with(BOTH.inUse().loop().holding(Volume.litres(62.5)))
                .curve();
        ServiceIsolation easy = ServiceIsolation.of(small, "B", Temperature.celsius(0), GaugePressure.bar(5));
        assertThat(easy.warmest()).isNull();
        assertThat(easy.text(UnitSystem.SI)).contains("every temperature at which the fluid is liquid");
        assertThatThrownBy(() -> ServiceIsolation.of(BOTH, "A", Temperature.celsius(80), GaugePressure.bar(1.5)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
