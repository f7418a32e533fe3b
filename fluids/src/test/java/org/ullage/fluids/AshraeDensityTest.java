package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.density;
import static org.ullage.fluids.GlycolCases.expansion;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.fahrenheit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.OutOfRangeException;

/** The ASHRAE tables: every printed cell, the blanks, the coarse rows, the misprint, and what lies between. */
class AshraeDensityTest {

    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void everyFilledCellIsMet(String key) {
        NumberTable printed = NumberTable.read("expected-ashrae-density-" + key + ".tsv");
        for (int percent = 10; percent <= 60; percent += 10) {
            GlycolSolution fluid = glycol(key).by(GlycolModel.ASHRAE_AS_PRINTED, vol(percent));
            for (int row = 0; row < printed.size(); row++) {
                double celsius = printed.number(row, "t_degC");
                double expected = printed.number(row, "v" + percent);
                if (Double.isNaN(expected)) {
                    assertThatThrownBy(() -> density(fluid, celsius)).isInstanceOf(OutOfRangeException.class);
                } else {
                    assertThat(density(fluid, celsius)).isCloseTo(expected, within(1e-9));
                }
            }
        }
    }

    @Test
    void hotRowsRoundToWhatIsPrinted() {
        NumberTable printed = NumberTable.read("expected-ashrae-density-hot.tsv");
        for (int row = 0; row < printed.size(); row++) {
            for (int percent = 10; percent <= 60; percent += 10) {
                GlycolSolution fluid = glycol(printed.text(row, "glycol")).by(GlycolModel.ASHRAE, vol(percent));
                double expected = printed.number(row, "v" + percent);
                double half = expected >= 1000 ? 0.5 : 0.05;
                assertThat(density(fluid, printed.number(row, "t_degC"))).isCloseTo(expected, within(half + 1e-9));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ethylene, 30, 4.56", "ethylene, 40, 4.77", "ethylene, 50, 4.98",
        "propylene, 30, 5.37", "propylene, 40, 5.81", "propylene, 50, 6.21"
    })
    void expansionFrom40To200Fahrenheit(String key, double percent, double expected) {
        GlycolSolution fluid = glycol(key).by(GlycolModel.ASHRAE, vol(percent));
        assertThat(Expansion.between(fluid, fahrenheit(40), fahrenheit(200)).percent())
                .isCloseTo(expected, within(0.01));
    }

    @Test
    void inchPoundTableHasTheSameRatios() {
        NumberTable printed = NumberTable.read("expected-ashrae-density-ip.tsv");
        for (int percent = 10; percent <= 60; percent += 10) {
            GlycolSolution fluid = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(percent));
            String column = "v" + percent;
            for (int row = 1; row < printed.size(); row++) {
                double ratio = printed.number(0, column) / printed.number(row, column);
                double ours = Expansion.between(
                                fluid,
                                fahrenheit(printed.number(0, "t_degF")),
                                fahrenheit(printed.number(row, "t_degF")))
                        .ratio();
                // half a unit of the last digit in both densities
                assertThat(ours).isCloseTo(ratio, within(0.0002));
            }
        }
    }

    @Test
    void blanksAreNotReachedBetweenColumnsEither() {
        GlycolSolution fluid = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(19.9));
        assertThat(fluid.lowest().text(org.ullage.quantity.Units.CELSIUS)).isEqualTo("0 degC");
        assertThatThrownBy(() -> density(fluid, -1))
                .hasMessage("temperature of ethylene glycol 19.9 vol% -1 degC is not allowed: it must be 0 degC to 125"
                        + " degC for ASHRAE Handbook table at 19.9 vol%; give a temperature inside the range, or name a"
                        + " model that reaches down to the freezing point: /melinder or /conde");
        assertThatThrownBy(() -> density(fluid, 126))
                .hasMessageEndingWith("no model here reaches further up: give a lower temperature");
    }

    @Test
    void frozenIsSaidToBeFrozen() {
        assertThatThrownBy(() -> density(Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(30)), -16))
                .hasMessage("temperature of ethylene glycol 30 vol% -16 degC is not allowed: it must be at or above its"
                        + " freezing point -15.72 degC by ASHRAE; it would hold ice: raise the temperature or the"
                        + " concentration");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 9.99, 60.01, 100})
    void concentrationsOutsideTheTableAreRefused(double percent) {
        assertThatThrownBy(() -> Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(percent)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("10.0 to 60.0 vol% in the ASHRAE table");
    }

    @Test
    void misprintIsCorrectedInTheOpen() {
        GlycolSolution used = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(10));
        GlycolSolution asPrinted = Glycol.ETHYLENE.by(GlycolModel.ASHRAE_AS_PRINTED, vol(10));
        assertThat(density(used, 30)).isCloseTo(1009.92, within(1e-9));
        assertThat(density(asPrinted, 30)).isCloseTo(1009.62, within(1e-9));
        assertThat(used.corrections()).hasSize(1);
        assertThat(used.corrections().get(0).toString())
                .startsWith("ethylene glycol 10 vol% at 30 degC: 1009.92 kg/m3 used for 1009.62 kg/m3, because ")
                .contains("[COMPUTED] the four neighbours in the column");
        assertThat(Glycol.ETHYLENE.by(GlycolModel.ASHRAE, vol(20)).corrections())
                .isEmpty();
        assertThat(asPrinted.corrections()).isEmpty();
        assertThat(Glycol.ETHYLENE.tableCorrections()).isEqualTo(used.corrections());
        assertThat(Glycol.PROPYLENE.tableCorrections()).isEmpty();
        assertThat(expansion(asPrinted, 10, 30) - expansion(used, 10, 30)).isCloseTo(0.030, within(0.001));
    }

    /** The columns are parabolas to 0.006 kg/m3, so a parabola through three rows foretells what lies between two. */
    @ParameterizedTest
    @CsvSource({
        // parabola through the rows 15, 20 and 25 degC, or 100 and the two before
        "ethylene, 30, 17.5, 1046.173",
        "propylene, 50, 62.5, 1015.146",
        // the rows 110 and 120 degC are not among those stored; continued from 90, 95 and 100 degC
        "ethylene, 40, 110, 1003.56",
        "ethylene, 40, 120, 994.92",
        "propylene, 40, 110, 970.79",
        "propylene, 40, 120, 960.97"
    })
    void betweenRows(String key, double percent, double celsius, double expected) {
        assertThat(density(glycol(key).by(GlycolModel.ASHRAE, vol(percent)), celsius))
                .isCloseTo(expected, within(celsius > 100 ? 0.1 : 0.01));
    }

    /** A column left out and found again from those beside it: the table's own roughness across concentration. */
    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void betweenColumnsTheCurveBendsAsTheTableDoes(String key) {
        for (double percent : new double[] {15, 25, 35, 45, 55}) {
            GlycolSolution middle = glycol(key).by(GlycolModel.ASHRAE, vol(percent));
            double left = density(glycol(key).by(GlycolModel.ASHRAE, vol(percent - 5)), 50);
            double right = density(glycol(key).by(GlycolModel.ASHRAE, vol(percent + 5)), 50);
            double above = density(middle, 50) - (left + right) / 2;
            // second differences of the table across columns are -0.7 to -1.4, an eighth of them is the bend
            assertThat(above).isBetween(0.05, 0.20);
        }
    }
}
