package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import org.junit.jupiter.api.Test;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.pressure.AfterLift;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** How far from the relief valve: 625 L at 0 degC and 1 bar, 100 L charged to 0.5 bar, 0.3125 L for each kelvin, air at 1 bar. */
class ReliefOutlookTest {

    private static final OperatingCurve CURVE = loop(
                    625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0.5)), reading(1, 0))
            .curve();
    private static final ReliefOutlook OUTLOOK =
            new ReliefOutlook(CURVE, ReliefValve.iso4126(GaugePressure.bar(2)), Length.metres(0));

    @Test
    void liftsByHand() {
        // Setting 2 bar: 25 L, 80 K. May open from 1.9 bar: 75 - 150/2.9 = 23.276 L, 74.48 K.
        assertThat(OUTLOOK.liftsAt().in(Units.CELSIUS)).isCloseTo(80, within(1e-6));
        assertThat(OUTLOOK.shutUpTo().in(Units.CELSIUS)).isCloseTo((75 - 150 / 2.9) / 0.3125, within(1e-6));
        assertThat(OUTLOOK.text(UnitSystem.SI))
                .isEqualTo("relief valve set to 2 bar: stays shut up to 74.5 degC, at its setting at 80 degC");
    }

    @Test
    void marginsByHand() {
        Temperature half = Temperature.celsius(40);
        // 12.5 L: 150 / 62.5 = 2.4 bar abs; up to 2.9 bar abs there is room for 62.5 - 150/2.9
        assertThat(OUTLOOK.margin(half).in(Units.BAR)).isCloseTo(0.5, within(1e-9));
        assertThat(OUTLOOK.acceptanceLeft(half).in(Units.LITRE)).isCloseTo(62.5 - 150 / 2.9, within(1e-9));
        assertThat(OUTLOOK.acceptanceLeft(Temperature.celsius(90))).isEqualTo(Volume.litres(0));
        assertThat(OUTLOOK.margin(Temperature.celsius(90)).si()).isNegative();
    }

    @Test
    void aValveAboveTheGaugeLiftsLater() {
        ReliefOutlook high = new ReliefOutlook(CURVE, OUTLOOK.valve(), Length.metres(5));
        assertThat(high.atReference(GaugePressure.bar(2)).in(Units.BAR)).isCloseTo(2.4903325, within(1e-9));
        assertThat(high.liftsAt()).isGreaterThan(OUTLOOK.liftsAt());
    }

    @Test
    void whatALiftLeaves() {
        Temperature hot = Temperature.celsius(80);
        GaugePressure closing = OUTLOOK.valve().closesAtLeast();
        AfterLift after = OUTLOOK.afterLift(hot, closing, Temperature.celsius(0));
        AfterLift alone = AfterLift.of(
                Volume.litres(100),
                AbsolutePressure.bar(1.5),
                AbsolutePressure.bar(2),
                Volume.litres(25),
                closing.absolute(InUse.ONE_BAR));
        assertThat(after.lost().in(Units.LITRE)).isCloseTo(alone.lost().in(Units.LITRE), within(1e-9));
        // 12.5 L of hot water are 12.5/1.04 L of cold water: less is missing than when hot litres are taken from cold
        // ones.
        assertThat(after.cold().in(Units.BAR)).isCloseTo(150 / (75 + 12.5 / 1.04), within(1e-9));
        assertThat(after.cold()).isGreaterThan(alone.cold());
        assertThat(OUTLOOK.afterLifting(hot, closing).pressure(hot).in(Units.BAR))
                .isCloseTo(1.4, within(1e-9));
    }

    @Test
    void aLiftThatEmptiesTheVessel() {
        Temperature hot = Temperature.celsius(80);
        GaugePressure low = GaugePressure.bar(0.8);
        AfterLift after = OUTLOOK.afterLift(hot, low, Temperature.celsius(0));
        // 100 (1 - 1.5/1.8) = 16.667 L left of the fill, 625 (1 - 1/1.04) L asked for
        assertThat(after.cold()).isNull();
        assertThat(after.missing().in(Units.LITRE)).isCloseTo(625 * (1 - 1 / 1.04) - 100 / 6.0, within(1e-9));
    }

    @Test
    void noLiftNoLoss() {
        Temperature mild = Temperature.celsius(20);
        assertThat(OUTLOOK.afterLifting(mild, GaugePressure.bar(1.9))).isSameAs(CURVE);
        AfterLift after = OUTLOOK.afterLift(mild, GaugePressure.bar(1.9), Temperature.celsius(0));
        assertThat(after.lost()).isEqualTo(Volume.litres(0));
        assertThat(after.cold().in(Units.BAR)).isCloseTo(2, within(1e-9));
    }

    @Test
    void aValveOutOfReach() {
        ReliefOutlook never = new ReliefOutlook(CURVE, ReliefValve.iso4126(GaugePressure.bar(50)), Length.metres(0));
        assertThat(never.text(UnitSystem.IP)).endsWith("stays shut as long as the fluid is liquid");
    }
}
