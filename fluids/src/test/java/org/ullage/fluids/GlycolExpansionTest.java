package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.density;
import static org.ullage.fluids.GlycolCases.expansion;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;

/** Every row of the comparison of expansions, every model; and the argument for the default model. */
class GlycolExpansionTest {

    private static final NumberTable EXPECTED = NumberTable.read("expected-expansion.tsv");

    /** Three decimals are given; the temperatures in the file are rounded to 0.001 K as well. */
    private static final double PLAY = 0.0011;

    private static void compare(GlycolModel model, String column, double play) {
        for (int row = 0; row < EXPECTED.size(); row++) {
            GlycolSolution fluid = glycol(EXPECTED.text(row, "glycol")).by(model, vol(EXPECTED.number(row, "vol_pct")));
            assertThat(expansion(fluid, EXPECTED.number(row, "t1_degC"), EXPECTED.number(row, "t2_degC")))
                    .as(fluid + " row " + row)
                    .isCloseTo(EXPECTED.number(row, column), within(play));
        }
    }

    @Test
    void ashrae() {
        compare(GlycolModel.ASHRAE, "ashrae_si_pct", PLAY);
    }

    @Test
    void melinder() {
        compare(GlycolModel.MELINDER, "melinder_pct", PLAY);
    }

    @Test
    void conde() {
        compare(GlycolModel.CONDE, "conde_pct", PLAY);
    }

    @Test
    void idealMixing() {
        compare(GlycolModel.IDEAL_MIXING, "ideal_mixing_pct", PLAY);
    }

    @Test
    void water() {
        for (int row = 0; row < EXPECTED.size(); row++) {
            assertThat(expansion(Water.IAPWS_IF97, EXPECTED.number(row, "t1_degC"), EXPECTED.number(row, "t2_degC")))
                    .isCloseTo(EXPECTED.number(row, "water_pct"), within(PLAY));
        }
    }

    @Test
    void volumePercentTakenForMassPercentIsTheKnownMistake() {
        for (int row = 0; row < EXPECTED.size(); row++) {
            GlycolSolution fluid = glycol(EXPECTED.text(row, "glycol"))
                    .by(GlycolModel.MELINDER, MassFraction.percent(EXPECTED.number(row, "vol_pct")));
            assertThat(expansion(fluid, EXPECTED.number(row, "t1_degC"), EXPECTED.number(row, "t2_degC")))
                    .isCloseTo(EXPECTED.number(row, "melinder_fed_vol_as_mass_pct"), within(PLAY));
        }
    }

    @Test
    void idealMixingMeetsWaterAtZero() {
        GlycolSolution none = EthyleneGlycol.massPercent(0);
        assertThat(none.densityModel()).isEqualTo(GlycolModel.IDEAL_MIXING);
        assertThat(expansion(none, 10, 80)).isCloseTo(expansion(Water.IAPWS_IF97, 10, 80), within(1e-12));
    }

    /** The bound in {@link Glycol#defaultModel}: where the default changes, the other model exceeds it by this part. */
    @Test
    void defaultIsOnTheSafeSideOfAshraeAndMelinder() {
        double[][] spans = {{4.444, 93.333}, {4.444, 60}, {10, 40}, {10, 60}, {10, 82}, {10, 90}, {20, 80}};
        for (Glycol glycol : Glycol.values()) {
            double allowed = glycol == Glycol.ETHYLENE ? 0.041 : 0.022;
            for (double percent = 10; percent <= 57.5; percent += 0.5) {
                for (double[] span : spans) {
                    double ours = expansion(glycol.of(vol(percent)), span[0], span[1]);
                    double ashrae = expansion(glycol.by(GlycolModel.ASHRAE, vol(percent)), span[0], span[1]);
                    double melinder = expansion(glycol.by(GlycolModel.MELINDER, vol(percent)), span[0], span[1]);
                    assertThat(ours).isGreaterThanOrEqualTo(Math.max(ashrae, melinder) * (1 - allowed));
                }
            }
        }
    }

    @Test
    void figuresOfTheArgument() {
        assertThat(expansion(Glycol.PROPYLENE.by(GlycolModel.MELINDER, vol(10)), 4.444, 93.333))
                .isCloseTo(4.06, within(0.005));
        assertThat(expansion(Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(10)), 4.444, 93.333))
                .isCloseTo(4.36, within(0.005));
        assertThat(expansion(Glycol.PROPYLENE.by(GlycolModel.IDEAL_MIXING, vol(10)), 4.444, 93.333))
                .isCloseTo(4.17, within(0.005));
        assertThat(expansion(Glycol.ETHYLENE.by(GlycolModel.MELINDER, vol(5)), 4.444, 93.333))
                .isCloseTo(3.84, within(0.005));
        assertThat(expansion(Glycol.ETHYLENE.by(GlycolModel.IDEAL_MIXING, vol(5)), 4.444, 93.333))
                .isCloseTo(3.95, within(0.005));
        assertThat(expansion(Glycol.ETHYLENE.by(GlycolModel.CONDE, vol(10)), 4.444, 93.333))
                .isLessThan(expansion(Water.IAPWS_IF97, 4.444, 93.333));
    }

    @Test
    void defaultsByConcentration() {
        assertThat(PropyleneGlycol.volumePercent(30).densityModel()).isEqualTo(GlycolModel.MELINDER);
        assertThat(PropyleneGlycol.volumePercent(20).densityModel()).isEqualTo(GlycolModel.ASHRAE);
        assertThat(EthyleneGlycol.volumePercent(20).densityModel()).isEqualTo(GlycolModel.MELINDER);
        assertThat(EthyleneGlycol.massPercent(40).densityModel()).isEqualTo(GlycolModel.MELINDER);
        assertThat(EthyleneGlycol.volumePercent(5).densityModel()).isEqualTo(GlycolModel.IDEAL_MIXING);
    }

    /** Reprinted up to 60 mass%. */
    @Test
    void condesEquationIsNotCarriedOnBeyondItsTable() {
        for (Glycol glycol : Glycol.values()) {
            assertThat(density(glycol.by(GlycolModel.CONDE, MassFraction.percent(60)), 20))
                    .isBetween(1000.0, 1150.0);
            assertThatThrownBy(() -> glycol.by(GlycolModel.CONDE, MassFraction.percent(60.1)))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("0 to 60.0 mass% for " + GlycolModel.CONDE.title());
        }
    }
}
