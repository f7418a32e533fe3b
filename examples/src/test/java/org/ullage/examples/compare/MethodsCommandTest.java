package org.ullage.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.comparison.Convention;
import org.ullage.examples.Program;
import org.ullage.method.Method;
import org.ullage.published.Methods;

class MethodsCommandTest {

    @Test
    void listsEveryMethodWithItsConventionsAndTheirSources() {
        Program list = SomeLoops.run("methods");
        assertThat(list.status()).isZero();
        assertThat(list.err()).isEmpty();
        assertThat(list.out())
                .contains(Methods.all().stream().map(Method::title).toList());
        assertThat(list.out()).startsWith("""
                ashrae: ASHRAE Handbook (HVAC Systems and Equipment) [1]
                  vessels: diaphragm, bladder, plain-steel, open
                  temperature meant by hot: highest operating temperature [1]
                """);
        assertThat(list.out()).contains("  gas charge: cold pressure; atmospheric pressure [", "\n[2] [PUBLISHED] ");
    }

    @Test
    void listsAsCsvWithAMarkOnEverySource() {
        List<Map<String, String>> rows = SomeLoops.run("methods", "--csv").rows();
        assertThat(rows)
                .hasSize(Methods.all().size() * Convention.values().length)
                .allSatisfy(row -> {
                    assertThat(row.get("words")).isNotBlank();
                    assertThat(row.get("source")).matches("\\[[A-Z_]+] .+");
                });
    }

    @Test
    void putsOneLoopToAllOfThem() {
        Program table = SomeLoops.run("methods", "-", "--id", "block, north");
        assertThat(table.status()).isZero();
        assertThat(table.out())
                .contains("beyond the mass balance", "spread ", "irc-m2003 refused: ", "for other kinds of vessel: ")
                .contains("By the mass balance ", "licensed person");
    }

    @Test
    void sortsTheCsvAndSaysWhyTheOthersRefuse() {
        List<Map<String, String>> rows =
                SomeLoops.run("methods", "-", "--id", "block, north", "--csv").rows();
        assertThat(rows).hasSameSizeAs(Methods.all());
        assertThat(rows.stream()
                        .filter(row -> "".equals(row.get("refused")))
                        .map(row -> SomeLoops.litres(row, "required volume")))
                .hasSizeGreaterThan(15)
                .isSorted();
        assertThat(rows)
                .filteredOn(row -> !"".equals(row.get("refused")))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row).containsEntry("required volume", ""))
                .anySatisfy(row -> assertThat(row.get("refused")).startsWith("vessel kind bladder is not"));
    }

    @Test
    void agreesWithASumByHand() {
        // (0.00041 * 200 - 0.0466) * 820 gal / (14.696 / 26.696 - 14.696 / 41.696), psi abs
        assertThat(SomeLoops.run("methods", "-", "--id", "steel", "--csv").rows())
                .filteredOn(row -> "asme-iv".equals(row.get("method")))
                .singleElement()
                .satisfies(row -> {
                    assertThat(SomeLoops.gallons(row, "net expansion")).isCloseTo(29.03, within(0.005));
                    assertThat(SomeLoops.gallons(row, "required volume")).isCloseTo(146.6, within(0.05));
                });
    }

    @ParameterizedTest
    @CsvSource({"nobody, 'no line has the id \"nobody\"'", "bad, 'loop \"bad\": contents: \"1000\"'"})
    void aLoopThatCannotBeReadEndsWithOne(String id, String reason) {
        Program refused = SomeLoops.run("methods", "-", "--id", id);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).startsWith("ullage methods: " + reason);
    }

    @ParameterizedTest
    @CsvSource({"missing.csv, there is no such file", "takeoff.csv, the header has the unknown column"})
    void aFileThatCannotBeReadEndsWithTwo(String file, String reason) {
        Program refused = SomeLoops.run("methods", file, "--id", "x");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).startsWith("ullage methods: " + file + ": " + reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"methods --id x", "methods -"})
    void fileAndIdBelongTogether(String arguments) {
        Program refused = SomeLoops.run(arguments.split(" ", -1));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("Missing required argument", "Help: ullage methods --help");
    }
}
