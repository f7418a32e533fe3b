package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;
import static org.ullage.quantity.Temperature.fahrenheit;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Density;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.UnitSystem;

/** Models side by side. */
class FluidComparisonTest {

    @Test
    void ethyleneGlycolAsTheSourcesDisagree() {
        FluidComparison comparison = FluidComparison.of(Glycol.ETHYLENE, vol(40), fahrenheit(40), fahrenheit(200));
        assertThat(comparison.rows()).hasSize(4);
        assertThat(comparison.rows().stream().filter(ComparedFluid::isChosen).map(ComparedFluid::label))
                .containsExactly("Melinder 2010 at 42.5 mass% by ASHRAE's pairing");
        ComparedFluid ashrae = comparison.rows().get(0);
        assertThat(ashrae.differencePoints().orElseThrow()).isCloseTo(-0.582, within(0.001));
        assertThat(ashrae.densityUncertainty()).isEmpty();
        assertThat(ashrae.remark()).contains("inhibited");
        assertThat(comparison.rows().get(3).densityUncertainty().orElseThrow().value())
                .isEqualTo(1);
    }

    @Test
    void whatRefusesStaysWithItsReason() {
        FluidComparison comparison = FluidComparison.of(
                Glycol.PROPYLENE.by(GlycolModel.ASHRAE, MassFraction.percent(40)), celsius(5), celsius(110));
        List<ComparedFluid> rows = comparison.rows();
        assertThat(rows.get(0).isChosen()).isTrue();
        assertThat(rows.get(1).expansion()).isEmpty();
        assertThat(rows.get(1).refusal()).contains("110 degC").contains("-20.57 degC to 100 degC");
        assertThat(rows.get(1).differencePoints()).isEmpty();
        assertThat(rows.get(3).differencePoints().orElseThrow()).isNegative();
    }

    @Test
    void concentrationOutsideAModelIsARefusalToo() {
        FluidComparison comparison = FluidComparison.of(Glycol.ETHYLENE, vol(5), celsius(5), celsius(60));
        assertThat(comparison.rows().get(0).label()).isEqualTo("ASHRAE Handbook table");
        assertThat(comparison.rows().get(0).refusal()).contains("10.0 to 60.0 vol% in the ASHRAE table");
        assertThat(Glycol.ETHYLENE.models(vol(5))).hasSize(3);
        assertThat(Glycol.PROPYLENE.models(MassFraction.percent(30))).hasSize(4);
    }

    @Test
    void refusedChoiceLeavesNoDifferences() {
        FluidComparison comparison = FluidComparison.of(Glycol.PROPYLENE, vol(30), celsius(5), celsius(120));
        assertThat(comparison.rows()).allMatch(row -> row.differencePoints().isEmpty());
        assertThat(comparison.rows().get(0).expansion()).isPresent();
    }

    @Test
    void water() {
        FluidComparison comparison = FluidComparison.ofWater(celsius(10), celsius(80));
        assertThat(comparison.rows()).hasSize(3);
        assertThat(comparison.rows())
                .allSatisfy(row -> assertThat(Math.abs(row.differencePoints().orElseThrow()))
                        .isLessThan(0.01));
        assertThat(comparison.toString())
                .startsWith("water, 10 degC to 80 degC\n")
                .contains("\n*  IAPWS-IF97 ");
    }

    @Test
    void chosenFluidIsPutFirstWhenItIsNotInTheList() {
        FluidComparison comparison = FluidComparison.of(
                List.of(Water.KELL_1975), PropyleneGlycol.volumePercent(30), celsius(10), celsius(60));
        assertThat(comparison.rows().get(0).isChosen()).isTrue();
        assertThat(comparison.rows()).hasSize(2);
    }

    @Test
    void textAndCsv() {
        FluidComparison comparison =
                FluidComparison.of(Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(30)), celsius(10), celsius(110));
        assertThat(comparison.text(UnitSystem.SI))
                .startsWith("propylene glycol 30 vol%, 10 degC to 110 degC\n")
                .contains("*  ASHRAE Handbook table at 30 vol%", "1032.55 kg/m3", "+0.000 points", "none stated")
                .contains("Melinder 2010 at 30.6 mass% by ASHRAE's pairing refuses: temperature of");
        String csv = comparison.csv(UnitSystem.IP);
        assertThat(csv.lines()).hasSize(5).allMatch(line -> !line.isBlank());
        assertThat(csv).contains("propylene glycol 30 vol%,ASHRAE Handbook table at 30 vol%,yes,50 degF,230 degF,");
    }

    /** Every row of the file carries its own numbers, and a refused one nothing but the reason. */
    @Test
    void fileHasTheNumbersOfEveryRow() {
        FluidComparison comparison =
                FluidComparison.of(Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(30)), celsius(10), celsius(110));
        List<String> lines = comparison.csv(UnitSystem.SI).lines().skip(1).toList();
        for (int i = 0; i < lines.size(); i++) {
            ComparedFluid row = comparison.rows().get(i);
            List<String> cells = List.of(lines.get(i).split(",", 10));
            assertThat(cells.get(1)).isEqualTo(row.label());
            assertThat(cells.get(2)).isEqualTo(row.isChosen() ? "yes" : "no");
            if (row.expansion().isPresent()) {
                Expansion expansion = row.expansion().orElseThrow();
                assertThat(Density.parse(cells.get(5)).si())
                        .isCloseTo(expansion.fromDensity().si(), within(0.006));
                assertThat(Density.parse(cells.get(6)).si())
                        .isCloseTo(expansion.toDensity().si(), within(0.006));
                assertThat(Double.parseDouble(cells.get(7))).isCloseTo(expansion.percent(), within(0.00051));
                assertThat(Double.parseDouble(cells.get(8)))
                        .isCloseTo(row.differencePoints().orElseThrow(), within(0.00051));
                assertThat(cells.get(9)).matches("none stated,.*|\"accuracy of .* = 1 % .*");
            } else {
                assertThat(cells.subList(5, 9)).containsOnly("");
                assertThat(cells.get(9)).startsWith(",").contains("temperature of ");
            }
        }
        assertThat(comparison.rows().get(1).expansion()).isEmpty();
        assertThat(comparison.rows().get(3).densityUncertainty()).isPresent();
    }

    @Test
    void tableTellsStatedUncertaintyAndARefusedChoice() {
        String sound = FluidComparison.of(Glycol.PROPYLENE, vol(30), celsius(10), celsius(80))
                .text(UnitSystem.SI);
        assertThat(sound).contains("1.0 % (accuracy of the pure glycol's density near 20 degC)");
        String refused = FluidComparison.of(Glycol.PROPYLENE, vol(30), celsius(5), celsius(120))
                .text(UnitSystem.SI);
        assertThat(refused).containsOnlyOnce("*").containsPattern("\n\\*  Melinder 2010 at .* refuses: ");
    }
}
