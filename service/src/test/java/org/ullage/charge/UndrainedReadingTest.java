package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class UndrainedReadingTest {

    /** 1.2 bar on a gauge 3 m above the vessel is 1.2 + 0.2942 bar at the vessel. */
    @Test
    void aReadingThatEqualsTheLoopIsSuspect() {
        UndrainedReading same = UndrainedReading.of(GaugePressure.bar(1.5), GaugePressure.bar(1.2), Length.metres(3));
        assertThat(same.loopAtVessel().in(Units.BAR)).isCloseTo(1.2 + 0.2941995, within(1e-9));
        assertThat(same.isSuspect()).isTrue();
        assertThat(same.text(UnitSystem.SI)).contains("the test was done wrongly");
    }

    @Test
    void aChargeBelowTheLoopIsNot() {
        UndrainedReading charge = UndrainedReading.of(GaugePressure.bar(1), GaugePressure.bar(1.2), Length.metres(3));
        assertThat(charge.isSuspect()).isFalse();
        assertThat(charge.difference().in(Units.BAR)).isCloseTo(-0.4941995, within(1e-9));
        assertThat(charge.text(UnitSystem.SI)).contains("differs").contains("-0.494");
        GaugeTolerance coarse = GaugeTolerance.of(PressureDifference.bar(0.6));
        assertThat(new UndrainedReading(charge.reading(), charge.loopGauge(), charge.gaugeAbove(), coarse).isSuspect())
                .isTrue();
    }

    @Test
    void aGaugeBelowTheVesselShowsMore() {
        UndrainedReading below = UndrainedReading.of(GaugePressure.psi(12), GaugePressure.psi(16.33), Length.feet(-10));
        assertThat(below.loopAtVessel().in(Units.PSI)).isCloseTo(16.33 - 4.3353, within(1e-3));
        assertThat(below.isSuspect()).isTrue();
    }
}
