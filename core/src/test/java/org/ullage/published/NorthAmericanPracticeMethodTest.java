package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselType;

class NorthAmericanPracticeMethodTest {

    private static final Temperature TEN = Temperature.celsius(10);
    private static final Temperature EIGHTY = Temperature.celsius(80);

    @Test
    void fivePsiAtTheTopAndFiveBelowTheSetting() {
        // a conventional foot of water is 0.4335 psi
        PressureInputs pressures =
                PressureInputs.NONE.withStaticHead(Length.feet(20)).withReliefSetting(GaugePressure.psi(30));
        Sizing sizing = Methods.PRACTICE_US.size(
                Jobs.with(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, EIGHTY), pressures));
        assertThat(sizing.coldPressure().in(Units.PSI)).isCloseTo(20 * 0.43353 + 5, within(1e-3));
        assertThat(sizing.finalPressure().in(Units.PSI)).isCloseTo(25, within(1e-9));
        double share = (1.04 / 1.005 - 1) * 39.7 / (39.7 - sizing.coldPressure().in(Units.PSI) - 14.7);
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(1000 * share, within(1e-6));
    }

    @Test
    void plainTanksAreRefused() {
        assertThatThrownBy(() ->
                        Methods.PRACTICE_US.size(Jobs.steel(TestFluid.WATER, VesselType.plainSteel(), TEN, EIGHTY)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("vessel kind plain-steel");
    }
}
