package org.ullage.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class ReliefValveTest {

    @Test
    void threeBarValveMayCloseOnlyAtTwoPointFour() {
        // EN ISO 4126-1: +-3 % or 0.1 bar, +10 % or 0.1 bar, -2.5 % to -20 % or 0.6 bar, the larger each time
        ReliefValve valve = ReliefValve.iso4126(GaugePressure.bar(3));
        assertThat(valve.mayOpenFrom().in(Units.BAR)).isCloseTo(2.9, within(1e-12));
        assertThat(valve.fullyOpenAt().in(Units.BAR)).isCloseTo(3.3, within(1e-12));
        assertThat(valve.closesAtMost().in(Units.BAR)).isCloseTo(2.925, within(1e-12));
        assertThat(valve.closesAtLeast().in(Units.BAR)).isCloseTo(2.4, within(1e-12));
    }

    @Test
    void largeAndSmallSettingsTakeTheLargerLimit() {
        ReliefValve ten = ReliefValve.iso4126(GaugePressure.bar(10));
        assertThat(ten.mayOpenFrom().in(Units.BAR)).isCloseTo(9.7, within(1e-12));
        assertThat(ten.closesAtLeast().in(Units.BAR)).isCloseTo(8, within(1e-12));
        ReliefValve one = ReliefValve.iso4126(GaugePressure.bar(1));
        assertThat(one.mayOpenFrom().in(Units.BAR)).isCloseTo(0.9, within(1e-12));
        assertThat(one.closesAtLeast().in(Units.BAR)).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void senselessValvesAreRefused() {
        assertThatThrownBy(() -> ReliefValve.iso4126(GaugePressure.bar(0.5)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("greatest blowdown 0.6 bar")
                .hasMessageContaining("setting 0.5 bar");
        PressureDifference none = PressureDifference.bar(0);
        assertThatThrownBy(() -> new ReliefValve(
                        GaugePressure.bar(3), PressureDifference.bar(-0.1), none, none, none, Source.given()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("tolerance -0.1 bar");
    }

    @Test
    void valveThatLiftedLeavesTheColdLoopLower() {
        // 100 L charged to 2 bar abs, filled to 2.5: 20 L of water; 40 L of expansion would need 60 L, at 3.4 bar abs
        // it holds 41.2 L
        AfterLift after = AfterLift.of(Volume.litres(100), bar(2), bar(2.5), Volume.litres(40), bar(3.4));
        double atClosing = 100 * (1 - 2 / 3.4);
        assertThat(after.lost().in(Units.LITRE)).isCloseTo(60 - atClosing, within(1e-9));
        assertThat(after.cold()).isNotNull();
        double left = 20 - (60 - atClosing);
        assertThat(after.cold().in(Units.BAR)).isCloseTo(200 / (100 - left), within(1e-9));
        assertThat(after.missing()).isEqualTo(Volume.litres(0));
    }

    @Test
    void vesselMayEvenRunEmpty() {
        AfterLift after = AfterLift.of(Volume.litres(100), bar(2), bar(2.1), Volume.litres(45), bar(3.4));
        assertThat(after.cold()).isNull();
        assertThat(after.missing().in(Units.LITRE)).isCloseTo(45 - 100 * (1 - 2 / 3.4), within(1e-9));
    }

    @Test
    void vesselThatIsLargeEnoughLosesNothing() {
        AfterLift after = AfterLift.of(Volume.litres(100), bar(2), bar(2.2), Volume.litres(10), bar(3.4));
        assertThat(after.lost()).isEqualTo(Volume.litres(0));
        assertThat(after.cold().in(Units.BAR)).isCloseTo(2.2, within(1e-9));
    }

    @Test
    void negativeExpansionIsRefused() {
        assertThatThrownBy(() -> AfterLift.of(Volume.litres(100), bar(2), bar(2.2), Volume.litres(-1), bar(3.4)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("expansion -1 L");
    }

    @Test
    void everyNegativeLimitIsRefusedByName() {
        PressureDifference none = PressureDifference.bar(0);
        PressureDifference negative = PressureDifference.bar(-0.1);
        assertThatThrownBy(() -> valve(negative, none, none)).hasMessageContaining("overpressure -0.1 bar");
        assertThatThrownBy(() -> valve(none, negative, none)).hasMessageContaining("least blowdown -0.1 bar");
    }

    @Test
    void blowdownsMayBeOneNumberButMustLeaveAPressureAtWhichTheValveCloses() {
        PressureDifference none = PressureDifference.bar(0);
        PressureDifference half = PressureDifference.bar(0.5);
        assertThat(valve(none, half, half).closesAtLeast()).isEqualTo(GaugePressure.bar(2.5));
        assertThat(valve(none, none, none).closesAtLeast()).isEqualTo(GaugePressure.bar(3));
        assertThatThrownBy(() -> valve(none, half, none)).hasMessageContaining("greatest blowdown 0 bar");
        assertThatThrownBy(() -> valve(none, none, PressureDifference.bar(3)))
                .hasMessageContaining("to below the setting 3 bar");
    }

    @Test
    void vesselChargedToTheColdPressureComesBackToIt() {
        AfterLift after = AfterLift.of(Volume.litres(100), bar(2), bar(2), Volume.litres(10), bar(3.4));
        assertThat(after.lost()).isEqualTo(Volume.litres(0));
        assertThat(after.cold()).isEqualTo(bar(2));
        assertThat(after.missing()).isEqualTo(Volume.litres(0));
    }

    @Test
    void withoutExpansionNothingIsLost() {
        AfterLift after = AfterLift.of(Volume.litres(100), bar(2), bar(2), Volume.litres(0), bar(3.4));
        assertThat(after.lost()).isEqualTo(Volume.litres(0));
    }

    @Test
    void valveThatClosesBelowTheColdPressureIsRefused() {
        assertThatThrownBy(() -> AfterLift.of(Volume.litres(100), bar(2), bar(2.5), Volume.litres(10), bar(2.4)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("2.4 bar abs")
                .hasMessageContaining("2.5 bar abs");
    }

    private static ReliefValve valve(
            PressureDifference overpressure, PressureDifference leastBlowdown, PressureDifference greatestBlowdown) {
        return new ReliefValve(
                GaugePressure.bar(3),
                PressureDifference.bar(0),
                overpressure,
                leastBlowdown,
                greatestBlowdown,
                Source.given());
    }

    private static AbsolutePressure bar(double number) {
        return AbsolutePressure.bar(number);
    }
}
