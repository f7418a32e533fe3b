package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.density;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;
import static org.ullage.quantity.Temperature.fahrenheit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Units;

/** Melinder's polynomials: every check value to its last digit, range and refusals. */
class MelinderTest {

    @Test
    void densityCheckValues() {
        NumberTable expected = NumberTable.read("expected-melinder-density.tsv");
        for (int row = 0; row < expected.size(); row++) {
            Glycol glycol = glycol(expected.text(row, "glycol"));
            double ours = GlycolData.of(glycol)
                    .melinder()
                    .density(expected.number(row, "x_mass_pct"), expected.number(row, "t_degC"));
            assertThat(ours).isCloseTo(expected.number(row, "rho_kgm3"), within(0.5e-4 + 1e-9));
        }
    }

    @Test
    void densityOfTheFluidIsThePolynomial() {
        assertThat(density(Glycol.ETHYLENE.by(GlycolModel.MELINDER, MassFraction.percent(40)), -15))
                .isCloseTo(1065.3252, within(1e-4));
    }

    @Test
    void freezingCheckValues() {
        NumberTable expected = NumberTable.read("expected-melinder-freezing.tsv");
        for (int row = 0; row < expected.size(); row++) {
            FreezingCurve curve = glycol(expected.text(row, "glycol")).freezing(FreezingModel.MELINDER);
            double ours = curve.pointAt(MassFraction.percent(expected.number(row, "x_mass_pct")))
                    .in(Units.CELSIUS);
            assertThat(ours).isCloseTo(expected.number(row, "t_freeze_degC"), within(0.5e-4 + 1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ethylene, 30, 5.04", "ethylene, 40, 5.35", "ethylene, 50, 5.58",
        "propylene, 30, 5.35", "propylene, 40, 6.00", "propylene, 50, 6.51"
    })
    void expansionFrom40To200Fahrenheit(String key, double percent, double expected) {
        GlycolSolution fluid = glycol(key).by(GlycolModel.MELINDER, vol(percent));
        assertThat(Expansion.between(fluid, fahrenheit(40), fahrenheit(200)).percent())
                .isCloseTo(expected, within(0.01));
    }

    @Test
    void meetsTheCrcHandbookAsFarAsTheyAreKnownToAgree() {
        NumberTable crc = NumberTable.read("expected-crc-ethylene.tsv");
        FreezingCurve freezing = Glycol.ETHYLENE.freezing(FreezingModel.MELINDER);
        for (int row = 0; row < crc.size(); row++) {
            MassFraction mass = MassFraction.percent(crc.number(row, "mass_pct"));
            double density = 1000 * crc.number(row, "rho_gcm3");
            assertThat(density / density(Glycol.ETHYLENE.by(GlycolModel.MELINDER, mass), 20))
                    .isBetween(0.9994, 1.00083);
            double depression = -freezing.pointAt(mass).in(Units.CELSIUS);
            assertThat(depression).isCloseTo(crc.number(row, "freezing_depression_K"), within(0.08));
        }
    }

    @Test
    void answersFromTheFreezingPointTo100Celsius() {
        GlycolSolution fluid = Glycol.PROPYLENE.by(GlycolModel.MELINDER, MassFraction.percent(40));
        assertThat(fluid.lowest()).isEqualTo(fluid.freezingPoint());
        assertThat(density(fluid, fluid.lowest().in(Units.CELSIUS))).isPositive();
        assertThat(density(fluid, 100)).isPositive();
        assertThat(fluid.specificVolumeSi(fahrenheit(212).si(), 1e5)).isPositive();
        assertThatThrownBy(() -> density(fluid, 100.001))
                .hasMessageContaining("-20.57 degC to 100 degC for Melinder 2010 at 40 mass%")
                .hasMessageEndingWith("or name a model that reaches 125 degC: /ashrae or /ideal");
        assertThatThrownBy(() -> density(fluid, -21)).hasMessageContaining("it would hold ice");
    }

    @Test
    void concentrationAbove60PercentByMassIsRefused() {
        assertThatThrownBy(() -> Glycol.ETHYLENE.by(GlycolModel.MELINDER, vol(60)))
                .hasMessage("mass fraction of ethylene glycol 62.6 mass% by ideal volumes at 20 degC is not allowed: it"
                        + " must be 0 to 60.0 mass% for Melinder 2010; another model may cover it: /ashrae or /ideal");
    }

    @Test
    void modelTextShowsTheConversion() {
        GlycolSolution fluid = Glycol.PROPYLENE.by(GlycolModel.MELINDER, vol(30));
        assertThat(fluid.name()).isEqualTo("propylene glycol 30 vol%");
        assertThat(fluid.model()).isEqualTo("Melinder 2010 at 30.6 mass% by ASHRAE's pairing");
        assertThat(fluid.text()).isEqualTo("propylene glycol 30 vol%/melinder");
        assertThat(fluid.lowest()).isGreaterThan(celsius(-13.2)).isLessThan(celsius(-13.1));
    }
}
