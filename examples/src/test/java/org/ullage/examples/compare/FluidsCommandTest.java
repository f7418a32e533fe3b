package org.ullage.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.GlycolModel;

class FluidsCommandTest {

    private static final String ETHYLENE = "ethylene glycol 40 vol%";

    @Test
    void listsNamesAndModelsWithTheirSources() {
        Program list = SomeLoops.run("fluids");
        assertThat(list.status()).isZero();
        assertThat(list.out()).contains(Fluids.known()).contains("glycol/conde, Conde 2011: ", "      [PUBLISHED] ");

        List<Map<String, String>> rows = SomeLoops.run("fluids", "--csv").rows();
        assertThat(rows)
                .hasSize(Fluids.waterModels().size() + GlycolModel.values().length)
                .allSatisfy(row -> assertThat(row.get("source")).startsWith("["));
    }

    @Test
    void reproducesThePublishedExpansions() {
        // 40 vol% of ethylene glycol from 40 to 200 degF: ASHRAE 4.77 %, Melinder 5.35 %
        Program table = SomeLoops.run("fluids", ETHYLENE, "--from", "40 degF", "--to", "200 degF", "--csv");
        assertThat(table.status()).isZero();
        List<Map<String, String>> rows = table.rows();
        assertThat(rows).hasSize(4);
        assertThat(percent(rows.get(0))).isCloseTo(4.77, within(0.01));
        assertThat(percent(rows.get(1))).isCloseTo(5.35, within(0.01));
        assertThat(rows.get(1)).containsEntry("chosen", "yes").containsEntry("from", "40 degF");
        assertThat(rows.get(0)).containsEntry("stated_uncertainty", "none stated");
        assertThat(rows.get(3).get("stated_uncertainty")).contains(" % [");
    }

    private static double percent(Map<String, String> row) {
        return Double.parseDouble(String.valueOf(row.get("expansion_percent")));
    }

    @Test
    void tellsFreezingPointLimitAndCareOfGlycol() {
        Program text = SomeLoops.run("fluids", ETHYLENE, "--from", "40 degF", "--to", "200 degF");
        assertThat(text.out())
                .contains("freezes at -15.83 degF [PUBLISHED] A. Melinder")
                .contains("highest recommended temperature: 250 degF: ")
                .contains("CAUTION Glycol harms ", "licensed person")
                .doesNotContain("degrades faster");
    }

    @Test
    void warnsOfDegradationWhicheverEndIsHot() {
        String[] hot = {"fluids", "propylene glycol 30 vol%/ashrae", "--from", "124 degC", "--to", "20 degC"};
        assertThat(SomeLoops.run(hot).out()).contains("CAUTION At 124 degC propylene glycol degrades faster");
    }

    @Test
    void showsTheCorrectedMisprint() {
        assertThat(SomeLoops.run("fluids", "ethylene glycol 10 vol%/ashrae").out())
                .contains("corrected: ethylene glycol 10 vol% at 30 degC: ", "1009.62 kg/m3");
    }

    @Test
    void saysWhatRefusesAndWhatIsNotKnown() {
        Program strong = SomeLoops.run("fluids", "propylene glycol 80 mass%/ideal");
        assertThat(strong.status()).isZero();
        assertThat(strong.out())
                .contains("Melinder 2010 refuses: mass fraction of propylene glycol 80 mass%")
                .contains("freezing point not known: ");
    }

    @ParameterizedTest
    @CsvSource({"180 degF, lb/ft3", "80 degC, kg/m3", "650 R, lb/ft3", "353 K, kg/m3"})
    void answersInTheUnitsOfTheTemperatures(String to, String unit) {
        assertThat(SomeLoops.run("fluids", "water", "--to", to).out())
                .contains(unit)
                .doesNotContain("CAUTION");
    }

    @Test
    void answersInTheUnitsAskedFor() {
        Program table = SomeLoops.run("fluids", "water/kell", "--to", "80 degC", "--units", "IP", "--csv");
        assertThat(table.rows()).hasSize(3);
        assertThat(table.out()).contains("lb/ft3").doesNotContain("kg/m3");
    }

    @Test
    void tellsTheCostInVessel() {
        Program text = SomeLoops.run("fluids", ETHYLENE, "--loop", "-", "--id", "cold");
        assertThat(text.status()).isZero();
        assertThat(text.out())
                .startsWith(ETHYLENE + ", 40 degF to 200 degF\n")
                .contains("Vessel of loop cold by ASHRAE Handbook", "beyond the first", " gal", "licensed person");
    }

    @Test
    void agreesWithASumByHand() {
        // 500 gal * (0.0477 - 3 * 6.5e-6 /degF * 160 degF) / (1 - 26.696 / 74.696), psi abs
        Map<String, String> row = vessels(ETHYLENE + "/ashrae").get(0);
        assertThat(SomeLoops.gallons(row, "required volume")).isCloseTo(34.7, within(0.1));
        assertThat(row).containsEntry("beyond the first", "0 gal").containsEntry("fluid", ETHYLENE);
    }

    private static List<Map<String, String>> vessels(String fluid) {
        return SomeLoops.run("fluids", fluid, "--loop", "-", "--id", "cold", "--csv")
                .rows();
    }

    @Test
    void everyModelStandsOnceAmongTheVessels() {
        assertThat(vessels("ethylene glycol 40 mass%/conde"))
                .extracting(row -> row.get("model"))
                .hasSize(4)
                .doesNotHaveDuplicates()
                .first()
                .isEqualTo("Conde 2011 at 40 mass%");
        assertThat(vessels("water/kell"))
                .extracting(row -> row.get("model"))
                .containsExactly("Kell 1975", "IAPWS-IF97", "saturated-liquid table");
    }

    @Test
    void modelsThatRefuseStandAmongTheVesselsWithTheirReason() {
        String weak = "propylene glycol 5 vol%";
        assertThat(vessels(weak))
                .filteredOn(row -> "ASHRAE Handbook table".equals(row.get("model")))
                .singleElement()
                .satisfies(row -> assertThat(row.get("refused")).contains("10.0 to 60.0 vol%"));
        assertThat(SomeLoops.run("fluids", weak, "--loop", "-", "--id", "cold").out())
                .contains("ASHRAE Handbook table refused: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "brine; 10 degC; fluid \"brine\" is not allowed: it must be one of: water",
                "water/best; 10 degC; model of water",
                "propylene glycol 30; 10 degC; concentration",
                "water; warm; \"warm\""
            })
    void refusalsSayWhyAndEndWithOne(String fluid, String from, String reason) {
        Program refused = SomeLoops.run("fluids", fluid, "--from", from);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).startsWith("ullage fluids: ").contains(reason);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fluids water --loop -",
                "fluids water --id cold",
                "fluids water --units METRIC",
                "fluids water --loop missing.csv --id x"
            })
    void whatIsMissingEndsWithTwo(String arguments) {
        Program refused = SomeLoops.run(arguments.split(" ", -1));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).isNotEmpty();
    }
}
