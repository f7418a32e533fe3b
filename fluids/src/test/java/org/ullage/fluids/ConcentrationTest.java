package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Units;

/** Percent by volume against percent by mass, by each definition. */
class ConcentrationTest {

    private static double volume(Glycol glycol, double mass, ConcentrationDefinition definition) {
        return glycol.volumeFraction(MassFraction.percent(mass), definition).in(Units.VOLUME_PERCENT);
    }

    @Test
    void everyRowOfTheComparison() {
        NumberTable expected = NumberTable.read("expected-conversion.tsv");
        for (int row = 0; row < expected.size(); row++) {
            Glycol glycol = glycol(expected.text(row, "glycol"));
            double mass = expected.number(row, "mass_pct");
            assertThat(volume(glycol, mass, ConcentrationDefinition.ASHRAE_PAIRING))
                    .isCloseTo(expected.number(row, "vol_pct_ashrae"), within(1e-9));
            assertThat(volume(glycol, mass, ConcentrationDefinition.IDEAL_20C))
                    .isCloseTo(expected.number(row, "vol_pct_ideal"), within(0.02));
            assertThat(volume(glycol, mass, ConcentrationDefinition.ON_SOLUTION_20C))
                    .isCloseTo(expected.number(row, "vol_pct_on_solution"), within(0.02));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void everyPrintedPair(String key) {
        NumberTable printed = NumberTable.read("expected-ashrae-freezing-" + key + ".tsv");
        Glycol glycol = glycol(key);
        for (int row = 0; row < printed.size(); row++) {
            double mass = printed.number(row, "mass_pct");
            double volume = printed.number(row, "vol_pct");
            assertThat(volume(glycol, mass, ConcentrationDefinition.ASHRAE_PAIRING))
                    .isCloseTo(volume, within(1e-9));
            assertThat(glycol.massFraction(vol(volume), ConcentrationDefinition.ASHRAE_PAIRING)
                            .in(Units.MASS_PERCENT))
                    .isCloseTo(mass, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(ConcentrationDefinition.class)
    void thereAndBack(ConcentrationDefinition definition) {
        for (Glycol glycol : Glycol.values()) {
            for (double mass = 0; mass <= 60; mass += 0.7) {
                MassFraction given = MassFraction.percent(mass);
                MassFraction back = glycol.massFraction(glycol.volumeFraction(given, definition), definition);
                assertThat(back.si()).isCloseTo(given.si(), within(1e-10));
            }
        }
    }

    @Test
    void pureDensities() {
        NumberTable expected = NumberTable.read("expected-pure-density.tsv");
        assertThat(expected.number(0, "rho_kgm3")).isEqualTo(998.206);
        assertThat(1 / Iapws97.specificVolume(293.15, 101_325)).isCloseTo(998.206, within(0.0006));
        for (int row = 1; row < expected.size(); row++) {
            double ours = GlycolData.of(glycol(expected.text(row, "component")))
                    .pure()
                    .density(293.15);
            assertThat(ours).isCloseTo(expected.number(row, "rho_kgm3"), within(0.06));
        }
    }

    @Test
    void beyondThePairingIdealVolumesAreUsedAndShown() {
        GlycolSolution fluid = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(60));
        assertThat(fluid.definition()).isEqualTo(ConcentrationDefinition.IDEAL_20C);
        assertThat(fluid.definition().source().provenance()).isEqualTo(Provenance.COMPUTED);
        assertThat(Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(60)).definition())
                .isEqualTo(ConcentrationDefinition.ASHRAE_PAIRING);
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> Glycol.ETHYLENE.massFraction(vol(58), ConcentrationDefinition.ASHRAE_PAIRING))
                .hasMessage("volume fraction of ethylene glycol 58 vol% is not allowed: it must be 0 to 57.8 vol% by"
                        + " ASHRAE's pairing; convert by ideal volumes at 20 degC, or give percent by mass");
        assertThatThrownBy(() -> Glycol.PROPYLENE.volumeFraction(
                        MassFraction.percent(61), ConcentrationDefinition.ON_SOLUTION_20C))
                .hasMessage("mass fraction of propylene glycol 61 mass% is not allowed: it must be 0 to 60.0 mass% by"
                        + " volume of the solution at 20 degC; convert by ideal volumes at 20 degC, or give percent by"
                        + " volume");
    }

    /** The pairing ends at a percentage by mass, which still belongs to it. */
    @Test
    void byMassToo() {
        double last = GlycolData.of(Glycol.ETHYLENE).pairing().mostMass();
        assertThat(Glycol.ETHYLENE
                        .by(GlycolModel.IDEAL_MIXING, MassFraction.percent(last))
                        .definition())
                .isEqualTo(ConcentrationDefinition.ASHRAE_PAIRING);
        assertThat(Glycol.ETHYLENE
                        .by(GlycolModel.IDEAL_MIXING, MassFraction.percent(last + 0.1))
                        .definition())
                .isEqualTo(ConcentrationDefinition.IDEAL_20C);
    }

    @Test
    void strongestMixtureOfTheMeasuredDensitiesConvertsThereAndBack() {
        ConcentrationDefinition onSolution = ConcentrationDefinition.ON_SOLUTION_20C;
        MassFraction most = MassFraction.percent(60);
        for (Glycol glycol : Glycol.values()) {
            assertThat(glycol.massFraction(glycol.volumeFraction(most, onSolution), onSolution))
                    .isEqualTo(most);
        }
    }
}
