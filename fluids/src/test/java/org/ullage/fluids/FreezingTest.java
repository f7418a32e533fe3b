package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;
import static org.ullage.quantity.Temperature.fahrenheit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Freezing points, their inverse and the safe side. */
class FreezingTest {

    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void everyAshraeRow(String key) {
        NumberTable printed = NumberTable.read("expected-ashrae-freezing-" + key + ".tsv");
        FreezingCurve curve = glycol(key).freezing(FreezingModel.ASHRAE);
        for (int row = 0; row < printed.size(); row++) {
            double expected = printed.number(row, "t_freeze_degC");
            assertThat(curve.pointAt(MassFraction.percent(printed.number(row, "mass_pct")))
                            .in(Units.CELSIUS))
                    .isCloseTo(expected, within(1e-9));
            assertThat(curve.pointAt(vol(printed.number(row, "vol_pct"))).in(Units.CELSIUS))
                    .isCloseTo(expected, within(1e-9));
            assertThat(curve.volumeFractionFor(celsius(expected)).in(Units.VOLUME_PERCENT))
                    .isCloseTo(printed.number(row, "vol_pct"), within(1e-8));
        }
    }

    @ParameterizedTest
    @EnumSource(FreezingModel.class)
    void inverseComesBack(FreezingModel model) {
        for (Glycol glycol : Glycol.values()) {
            FreezingCurve curve = glycol.freezing(model);
            for (double t = -0.1; t > curve.coldest().in(Units.CELSIUS); t -= 0.37) {
                assertThat(curve.pointAt(curve.massFractionFor(celsius(t))).in(Units.CELSIUS))
                        .isCloseTo(t, within(1e-8));
            }
            assertThat(curve.massFractionFor(celsius(0)).si()).isLessThan(1e-4);
            assertThat(curve.massFractionFor(curve.coldest()).in(Units.MASS_PERCENT))
                    .isCloseTo(60, within(1e-8));
        }
    }

    @Test
    void theSourcesDisagreeAsKnownAndTheWarmerIsSafe() {
        MassFraction sixty = MassFraction.percent(60);
        Temperature ashrae = Glycol.ETHYLENE.freezing(FreezingModel.ASHRAE).pointAt(sixty);
        Temperature melinder = Glycol.ETHYLENE.freezing(FreezingModel.MELINDER).pointAt(sixty);
        assertThat(ashrae.minus(melinder).si()).isCloseTo(2.90, within(0.01));
        assertThat(Glycol.ETHYLENE.freezing().pointAt(sixty)).isEqualTo(ashrae);
        MassFraction fiftyFive = MassFraction.percent(55);
        Temperature warmer = Glycol.PROPYLENE.freezing(FreezingModel.MELINDER).pointAt(fiftyFive);
        assertThat(warmer.minus(Glycol.PROPYLENE.freezing(FreezingModel.ASHRAE).pointAt(fiftyFive))
                        .si())
                .isCloseTo(1.44, within(0.01));
        assertThat(Glycol.PROPYLENE.freezing().pointAt(fiftyFive)).isEqualTo(warmer);
    }

    @Test
    void langesHandbookIsNearForPropyleneGlycol() {
        NumberTable expected = NumberTable.read("expected-langes-propylene.tsv");
        FreezingCurve curve = Glycol.PROPYLENE.freezing(FreezingModel.ASHRAE);
        for (int row = 0; row < expected.size(); row++) {
            assertThat(curve.pointAt(vol(expected.number(row, "vol_pct"))).in(Units.CELSIUS))
                    .isCloseTo(
                            expected.number(row, "t_freeze_degC"),
                            within(1.5)); // its dilute rows are warmer than any other source
        }
    }

    @Test
    void protectionTableOfTheTradeIsNear() {
        NumberTable expected = NumberTable.read("expected-freeze-protection.tsv");
        for (int row = 0; row < expected.size(); row++) {
            Temperature wanted = fahrenheit(expected.number(row, "t_degF"));
            assertThat(percentFor(Glycol.ETHYLENE, wanted)).isCloseTo(expected.number(row, "EG"), within(3.0));
            assertThat(percentFor(Glycol.PROPYLENE, wanted)).isCloseTo(expected.number(row, "PG"), within(3.0));
        }
    }

    private static double percentFor(Glycol glycol, Temperature wanted) {
        return glycol.freezing(FreezingModel.ASHRAE).volumeFractionFor(wanted).in(Units.VOLUME_PERCENT);
    }

    @Test
    void protectingMixtureIsLiquidThere() {
        GlycolSolution fluid = Glycol.PROPYLENE.protectingTo(celsius(-25));
        assertThat(fluid.specificVolumeSi(celsius(-25).si(), 1e5)).isPositive();
        assertThat(Glycol.ETHYLENE.protectingTo(celsius(-30)).freezingPoint()).isLessThanOrEqualTo(celsius(-30));
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> Glycol.ETHYLENE.freezing().massFractionFor(celsius(-49)))
                .hasMessage(
                        "freezing point of ethylene glycol -49 degC is not allowed: it must be -48.3 degC (60 mass%)"
                                + " to 0 degC by the warmer of ASHRAE and Melinder 2010; above 0 degC water alone does; below,"
                                + " no mixture of this source protects");
        assertThatThrownBy(() -> Glycol.PROPYLENE.protectingTo(celsius(1))).hasMessageContaining("1 degC");
        assertThatThrownBy(() -> Glycol.ETHYLENE.freezing().pointAt(MassFraction.percent(60.5)))
                .hasMessageContaining("0 to 60.0 mass% for a freezing point by the warmer");
    }

    /** Water needs no glycol, and the strongest mixture covered is found to its last digit. */
    @ParameterizedTest
    @EnumSource(FreezingModel.class)
    void endsOfTheCurve(FreezingModel model) {
        for (Glycol glycol : Glycol.values()) {
            FreezingCurve curve = glycol.freezing(model);
            assertThat(curve.massFractionFor(curve.coldest())).isEqualTo(MassFraction.percent(60));
            assertThat(curve).hasToString("freezing point of " + glycol.text() + " by " + model.words());
        }
    }

    /** Where the freezing point is known it decides what is said of a temperature below the model's range. */
    @Test
    void strongestMixtureOfKnownFreezingPointIsSaidToFreeze() {
        GlycolSolution sixty = Glycol.PROPYLENE.by(GlycolModel.MELINDER, MassFraction.percent(60));
        assertThatThrownBy(() -> sixty.specificVolumeSi(sixty.freezingPoint().si() - 1, 3e5))
                .hasMessageContaining("it would hold ice");
        GlycolSolution ideal = Glycol.PROPYLENE.by(GlycolModel.IDEAL_MIXING, MassFraction.percent(70));
        assertThatThrownBy(() -> ideal.specificVolumeSi(celsius(-1).si(), 3e5))
                .hasMessageContaining("give a temperature inside the range");
    }
}
