package org.ullage.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.examples.Program;
import org.ullage.method.Method;
import org.ullage.published.Methods;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class CompareCommandsTest {

    private static final String LOOPS = Program.HEADER
            + "\n\"block, north\",ashrae,bladder,water,1000 L,10 degC,80 degC,steel,,,10 m,3 bar,,\n"
            + "cold,ashrae,bladder,ethylene glycol 40 vol%,500 gal,40 degF,200 degF,steel,12 psi,60 psi,,,,\n"
            + "bad,ashrae,bladder,water,1000,10 degC,80 degC,steel,,,10 m,3 bar,,\n";

    private static Program run(String... arguments) {
        return Program.run(new ByteArrayInputStream(LOOPS.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    @Test
    void methodsListsEveryMethodWithItsConventionsAndSource() {
        Program list = run("methods");
        assertThat(list.status()).isZero();
        assertThat(list.out())
                .contains(Methods.all().stream().map(Method::title).toList());
        assertThat(list.out()).contains("  reserve: none", "[FROM_MEMORY]", "[PUBLISHED]");
    }

    @Test
    void methodsPutsOneLoopToAllOfThem() {
        Program table = run("methods", "-", "--id", "block, north");
        assertThat(table.status()).isZero();
        assertThat(table.out()).contains("beyond the mass balance", "spread ", "irc-m2003 refused: ", "mass balance");
    }

    @Test
    void methodsAsCsvIsSorted() {
        List<Double> litres = run("methods", "-", "--id", "block, north", "--csv").rows().stream()
                .map(row -> Volume.parse(row.get("required volume")).in(Units.LITRE))
                .toList();
        assertThat(litres).hasSizeGreaterThan(15).isSorted();
    }

    @Test
    void explainAddsUp() {
        Program table = run("explain", "-", "--id", "block, north", "--from", "ashrae", "--to", "en-12828", "--csv");
        assertThat(table.status()).isZero();
        List<Map<String, String>> rows = table.rows();
        double first = litres(rows.get(0), "required_volume");
        double last = litres(rows.get(rows.size() - 1), "required_volume");
        double sum = rows.stream()
                .skip(1)
                .mapToDouble(row -> litres(row, "difference"))
                .sum();
        // each row is printed to four digits
        assertThat(sum).isCloseTo(last - first, within(0.05));
    }

    private static double litres(Map<String, String> row, String column) {
        return Volume.parse(String.valueOf(row.get(column))).in(Units.LITRE);
    }

    @Test
    void explainInWordsAndOnTheAverage() {
        Program words =
                run("explain", "-", "--id", "block, north", "--from", "ashrae", "--to", "en-12828", "--average");
        assertThat(words.out())
                .contains("reserve: none -> 0.5 vol% of the contents", "in all)", "Average over all orders:");
    }

    @Test
    void fluidsListsWhatIsKnown() {
        assertThat(run("fluids").out()).contains("water", "ethylene glycol", "melinder");
    }

    @Test
    void fluidsReproducesThePublishedExpansions() {
        // ASHRAE 4.77 % and Melinder 5.35 % for 40 vol% ethylene glycol from 40 to 200 degF
        Program table = run("fluids", "ethylene glycol 40 vol%", "--from", "40 degF", "--to", "200 degF");
        assertThat(table.status()).isZero();
        assertThat(table.out()).contains("4.766 %", "5.347 %", "freezes at ", "highest recommended temperature");
    }

    @Test
    void fluidsInInchPoundAndAsCsv() {
        Program table = run("fluids", "water", "--to", "180 degF", "--units", "IP", "--csv");
        assertThat(table.rows()).hasSize(3);
        assertThat(table.out()).contains("lb/ft3");
    }

    @Test
    void fluidsInLitresOfVessel() {
        Program table = run("fluids", "ethylene glycol 40 vol%", "--loop", "-", "--id", "cold");
        assertThat(table.out()).contains("Vessel of loop cold by ASHRAE", "beyond the first", "Melinder", " gal");
        List<Map<String, String>> rows = run(
                        "fluids", "ethylene glycol 40 vol%", "--loop", "-", "--id", "cold", "--csv")
                .rows();
        assertThat(rows)
                .hasSize(4)
                .first()
                .satisfies(row -> assertThat(row).containsEntry("beyond the first", "0 gal"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "methods - --id nobody; no line has the id \"nobody\"",
                "methods - --id bad; contents: \"1000\"",
                "methods missing.csv --id x; missing.csv: there is no such file",
                "explain - --id cold --from nothing --to ashrae; method \"nothing\"",
                "explain - --id cold --from irc-m2003 --to ashrae; is not allowed",
                "fluids brine; brine",
                "fluids water --from warm; \"warm\""
            })
    void refusalsSayWhyAndEndWithOne(String arguments, String reason) {
        Program refused = run(arguments.split(" ", -1));
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).startsWith("ullage ").contains(reason);
    }

    @Test
    void missingOptionsEndWithTwo() {
        assertThat(run("explain", "-", "--id", "cold").status()).isEqualTo(2);
    }
}
