package org.ullage.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselKind;

class PressureRulesTest {

    private static final Source TEST = Source.commonPractice("test");
    private static final double ATMOSPHERE = 100_000;

    @Test
    void tenMetresOfConventionalWater() {
        assertThat(StaticHead.of(Length.metres(10))).isEqualTo(PressureDifference.of(10, Units.METRE_OF_WATER));
        assertThat(StaticHead.of(Length.feet(10)).in(Units.PSI)).isCloseTo(4.335, within(0.0005));
    }

    @Test
    void coldPressureAddsHeadMarginAndAir() {
        ColdPressureRule rule = ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), TEST);
        assertThat(rule.pascals(10, 400_000, ATMOSPHERE)).isEqualTo(98_066.5 + 20_000 + 100_000);
    }

    @Test
    void vapourPressureDecidesOnlyWhereTheRuleCountsItAndItIsHigher() {
        ColdPressureRule rule = ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), TEST)
                .with(ColdPressureRule.VapourPressure.LIMIT);
        assertThat(rule.pascals(10, 143_000, ATMOSPHERE)).isEqualTo(98_066.5 + 143_000);
        assertThat(rule.pascals(10, 110_000, ATMOSPHERE)).isEqualTo(98_066.5 + 20_000 + 100_000);
    }

    @Test
    void vapourPressureAboveAtmosphericCanBeAdded() {
        ColdPressureRule rule = ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), TEST)
                .with(ColdPressureRule.VapourPressure.ADDED);
        assertThat(rule.pascals(10, 143_000, ATMOSPHERE)).isEqualTo(98_066.5 + 20_000 + 143_000);
        assertThat(rule.pascals(10, 90_000, ATMOSPHERE)).isEqualTo(98_066.5 + 20_000 + 100_000);
        assertThat(rule).hasToString("static head + 0.2 bar + vapour pressure above atmospheric");
    }

    @Test
    void fixedPressuresFollowNeitherHeadNorSetting() {
        ColdPressureRule cold = ColdPressureRule.fixed(GaugePressure.psi(12), TEST);
        assertThat(cold.pascals(3, 0, ATMOSPHERE)).isEqualTo(cold.pascals(30, 0, ATMOSPHERE));
        assertThat(cold.pascals(3, 0, ATMOSPHERE)).isCloseTo(12 * 6894.757293168361 + ATMOSPHERE, within(1e-6));
        assertThat(cold).hasToString("12 psi (0.8274 bar)");
        FinalPressureRule last = FinalPressureRule.fixed(GaugePressure.psi(30), TEST);
        assertThat(last.pascals(300_000, ATMOSPHERE)).isEqualTo(last.pascals(600_000, ATMOSPHERE));
        assertThat(last.pascals(300_000, ATMOSPHERE)).isCloseTo(30 * 6894.757293168361 + ATMOSPHERE, within(1e-6));
        assertThat(last).hasToString("30 psi (2.068 bar)");
    }

    @Test
    void staticHeadCanHaveAFactorButNotBelowOne() {
        ColdPressureRule rule =
                ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), TEST).withHeadFactor(1.1, TEST);
        assertThat(rule.pascals(10, 0, ATMOSPHERE)).isCloseTo(1.1 * 98_066.5 + 100_000, within(1e-6));
        assertThat(rule).hasToString("1.1 x static head");
        assertThatThrownBy(() -> rule.withHeadFactor(0.9, TEST))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("0.9");
    }

    @Test
    void floorHoldsInLowLoops() {
        ColdPressureRule rule = ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.15), TEST)
                .notBelow(AbsolutePressure.bar(1.5), TEST);
        assertThat(rule.pascals(2, 0, ATMOSPHERE)).isEqualTo(150_000);
        assertThat(rule.pascals(10, 0, ATMOSPHERE)).isCloseTo(213_066.5, within(1e-6));
    }

    @Test
    void halfABarBelowSmallSettingsAndTenPercentBelowLargeOnes() {
        FinalPressureRule rule = new FinalPressureRule(0.9, PressureDifference.bar(0.5), TEST);
        assertThat(rule.pascals(300_000, ATMOSPHERE)).isEqualTo(350_000);
        assertThat(rule.pascals(500_000, ATMOSPHERE)).isEqualTo(550_000);
        assertThat(rule.pascals(600_000, ATMOSPHERE)).isEqualTo(640_000);
    }

    @Test
    void settingItselfShareAndMargin() {
        assertThat(FinalPressureRule.setting(TEST).pascals(300_000, 0)).isEqualTo(300_000);
        assertThat(FinalPressureRule.shareOfSetting(0.9, TEST).pascals(300_000, 0))
                .isEqualTo(270_000);
        assertThat(FinalPressureRule.below(PressureDifference.psi(5), TEST).pascals(300_000, 0))
                .isCloseTo(300_000 - 34_473.786, within(0.001));
    }

    @Test
    void senselessFinalRulesAreRefused() {
        assertThatThrownBy(() -> FinalPressureRule.shareOfSetting(90, TEST))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("0.9 for 90 %");
        assertThatThrownBy(() -> FinalPressureRule.shareOfSetting(Double.NaN, TEST))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FinalPressureRule.below(PressureDifference.bar(-0.5), TEST))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("-0.5 bar");
    }

    @Test
    void plainTanksStartFullOfAirAndOthersAtTheColdPressure() {
        assertThat(ChargeRule.usualFor(VesselKind.PLAIN_STEEL).pascals(2, 1)).isEqualTo(1);
        assertThat(ChargeRule.usualFor(VesselKind.DIAPHRAGM).pascals(2, 1)).isEqualTo(2);
        assertThat(ChargeRule.usualFor(VesselKind.BLADDER).pascals(2, 1)).isEqualTo(2);
    }

    @Test
    void rulesSayThemselvesInWords() {
        assertThat(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), TEST)
                        .with(ColdPressureRule.VapourPressure.LIMIT)
                        .notBelow(AbsolutePressure.bar(1.5), TEST))
                .hasToString(
                        "static head + 0.2 bar, and at least static head + vapour pressure, not below 1.5 bar abs");
        assertThat(new FinalPressureRule(0.9, PressureDifference.bar(0.5), TEST))
                .hasToString("the lower of relief setting - 0.5 bar and 0.9 x relief setting");
        assertThat(FinalPressureRule.shareOfSetting(0.9, TEST)).hasToString("0.9 x relief setting");
        assertThat(FinalPressureRule.setting(TEST)).hasToString("relief setting");
        assertThat(AtmosphereRule.STANDARD).hasToString("1.01325 bar abs");
    }

    @Test
    void shareOfNothingIsRefused() {
        assertThatThrownBy(() -> FinalPressureRule.shareOfSetting(0, TEST))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above 0 and at most 1");
    }

    @Test
    void chargeBelowTheColdPressureShowsTheDifferenceInItsStepAndInItsWords() {
        ChargeRule rule = ChargeRule.belowColdPressure(PressureDifference.bar(0.2), TEST);
        assertThat(rule.pascals(200_000, ATMOSPHERE)).isCloseTo(180_000, within(1e-6));
        assertThat(rule).hasToString("cold pressure - 0.2 bar");
        assertThat(rule.step(AbsolutePressure.bar(2), AbsolutePressure.bar(1), AbsolutePressure.bar(1.8))
                        .formula())
                .isEqualTo("p_i - d_0");
    }

    @Test
    void usualChargesNameThePressureTheyFollow() {
        AbsolutePressure cold = AbsolutePressure.bar(2);
        AbsolutePressure air = AbsolutePressure.bar(1);
        assertThat(ChargeRule.COLD_PRESSURE).hasToString("cold pressure");
        assertThat(ChargeRule.COLD_PRESSURE.step(cold, air, cold).formula()).isEqualTo("p_i");
        assertThat(ChargeRule.ATMOSPHERIC).hasToString("atmospheric pressure");
        assertThat(ChargeRule.ATMOSPHERIC.step(cold, air, air).formula()).isEqualTo("p_a");
    }
}
