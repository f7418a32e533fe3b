package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.examples.Program;

/** Each kind of bad line gets an error that names column, value, what is allowed and what to do; the rest is answered. */
class BadLinesTest {

    private static final String GOOD = "good,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,1.2 bar,2.7 bar,,,,";

    /** A bad line and what its error must say. */
    private record Bad(String line, List<String> words) {

        static Bad of(String text) {
            List<String> parts = Arrays.asList(text.split(" ~ ", -1));
            return new Bad("bad," + parts.get(0), parts.subList(1, parts.size()));
        }

        @Override
        public String toString() {
            return line;
        }
    }

    static List<Bad> all() throws IOException {
        try (InputStream file = BadLinesTest.class.getResourceAsStream("bad-lines.txt")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Bad::of)
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void aBadLineSaysWhatIsWrong(Bad bad) {
        Program run = Program.sizeLines(bad.line);

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.row()).containsEntry("id", "bad").containsEntry("required_volume", "");
        assertThat(run.row().get("error")).startsWith(bad.words.get(0)).contains(bad.words);
    }

    @Test
    void theGoodLinesBetweenAreAnswered() throws IOException {
        List<Bad> bad = all();
        List<String> lines = new ArrayList<>(List.of(GOOD));
        bad.forEach(one -> lines.addAll(List.of(one.line, GOOD)));
        Map<String, String> answer = Program.sizeLines(GOOD).row();

        Program run = Program.sizeLines(lines.toArray(String[]::new));

        assertThat(bad).hasSizeGreaterThan(20);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.rows()).hasSize(lines.size());
        assertThat(run.rows())
                .filteredOn(row -> row.get("id").equals("good"))
                .hasSize(bad.size() + 1)
                .containsOnly(answer);
        assertThat(run.rows())
                .filteredOn(row -> row.get("id").equals("bad"))
                .hasSize(bad.size())
                .allSatisfy(row -> assertThat(row.get("error")).isNotEmpty());
    }

    @Test
    void aQuoteThatIsNeverClosedSpoilsItsOwnLineOnly() {
        List<String> lines = new ArrayList<>(List.of("\"open" + GOOD));
        for (int i = 0; i < 3 * LogicalLines.MOST_LINES; i++) {
            lines.add(GOOD);
        }

        Program run = Program.sizeLines(lines.toArray(String[]::new));

        assertThat(run.rows()).hasSize(lines.size());
        assertThat(run.rows().get(0).get("error")).startsWith("line 2: ");
        assertThat(run.rows().subList(1, lines.size()))
                .allSatisfy(row -> assertThat(row).containsEntry("error", ""));
    }
}
