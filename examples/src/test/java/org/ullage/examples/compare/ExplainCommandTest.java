package org.ullage.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;

class ExplainCommandTest {

    private static Program explain(String id, String from, String to, String... more) {
        Stream<String> fixed = Stream.of("explain", "-", "--id", id, "--from", from, "--to", to);
        return SomeLoops.run(Stream.concat(fixed, Stream.of(more)).toArray(String[]::new));
    }

    private static double sum(List<Map<String, String>> rows, String column) {
        return rows.stream()
                .skip(1)
                .mapToDouble(row -> SomeLoops.litres(row, column))
                .sum();
    }

    @ParameterizedTest
    @CsvSource({"ashrae, en-12828", "en-12828, ashrae", "mass-balance, bs-5449", "une-100155, practice-hu"})
    void stepsAndAveragesAddUp(String from, String to) {
        List<Map<String, String>> rows =
                explain("block, north", from, to, "--average", "--csv").rows();
        double difference = SomeLoops.litres(rows.get(rows.size() - 1), "required_volume")
                - SomeLoops.litres(rows.get(0), "required_volume");
        // every number is printed to six digits
        assertThat(sum(rows, "difference")).isCloseTo(difference, within(0.001));
        assertThat(sum(rows, "average_difference")).isCloseTo(difference, within(0.001));
    }

    @Test
    void agreesWithASumByHand() {
        // reserves of 0.5 and 1 % of 1000 L; 1 / (1 - 2 bar abs / 3.5 bar abs) litres of vessel for each litre of water
        List<Map<String, String>> rows =
                explain("given", "en-12828", "practice-be", "--csv").rows();
        assertThat(rows.get(0)).containsEntry("conventions", "en-12828").doesNotContainKey("average_difference");
        assertThat(rows)
                .filteredOn(row -> "reserve".equals(row.get("conventions")))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row).containsEntry("to", "1 vol% of the contents");
                    assertThat(SomeLoops.litres(row, "difference")).isCloseTo((10 - 5) / (1 - 2 / 3.5), within(0.0001));
                });
    }

    @Test
    void tellsItInWords() {
        Program words = explain("block, north", "ashrae", "en-12828");
        assertThat(words.status()).isZero();
        assertThat(words.out())
                .startsWith("ASHRAE Handbook (HVAC Systems and Equipment): ")
                .contains("reserve: none -> 0.5 vol% of the contents", " L in all)", "licensed person")
                .doesNotContain("on the average");
    }

    @Test
    void addsTheAverageInWords() {
        Program words = explain("given", "practice-nl", "practice-hu", "--average");
        assertThat(words.status()).isZero();
        assertThat(words.out())
                .contains("on the average over all orders\n")
                .containsPattern("\n {2}gas charge +\\+13\\.27 L\n");
    }

    @Test
    void answersInGallonsIfTheLoopIsWrittenSo() {
        assertThat(explain("cold", "ashrae", "practice-us").out()).contains(" gal in all)");
    }

    @Test
    void conventionsThatDoNotGoTogetherAreExchangedTogetherAndHaveNoAverage() {
        Program text = explain("tight", "en-12828", "dtu-65.11", "--average");
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out()).contains(" L in all)").doesNotContain("on the average");
        assertThat(text.err()).startsWith("ullage explain: there is no average over all orders, because some mixture");

        Program csv = explain("tight", "en-12828", "dtu-65.11", "--average", "--csv");
        assertThat(csv.status()).isEqualTo(1);
        assertThat(csv.rows())
                .allSatisfy(row -> assertThat(row).containsEntry("average_difference", ""))
                .anySatisfy(row -> assertThat(row).containsEntry("conventions", "cold pressure | final pressure"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "nobody; ashrae; en-12828; no line has the id \"nobody\"",
                "bad; ashrae; en-12828; loop \"bad\": contents: \"1000\"",
                "given; nothing; ashrae; method \"nothing\"",
                "given; ashrae; nothing; method \"nothing\"",
                "given; irc-m2003; ashrae; irc-m2003 refuses loop \"given\": cold_pressure \"1 bar\": cold pressure 1 bar",
                "given; ashrae; idae-022; idae-022 refuses loop \"given\": method \"idae-022\": contents of the collectors"
            })
    void refusalsSayWhyAndEndWithOne(String id, String from, String to, String reason) {
        Program refused = explain(id, from, to);
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).startsWith("ullage explain: " + reason);
    }

    @Test
    void aFileThatIsNotThereEndsWithTwo() {
        Program refused = SomeLoops.run("explain", "no.csv", "--id", "x", "--from", "ashrae", "--to", "en-12828");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).startsWith("ullage explain: no.csv: there is no such file");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "explain - --id given",
                "explain - --from ashrae --to en-12828",
                "explain --id given --from ashrae --to en-12828"
            })
    void whatIsMissingEndsWithTwo(String arguments) {
        Program refused = SomeLoops.run(arguments.split(" ", -1));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("Missing required", "Help: ullage explain --help");
    }
}
