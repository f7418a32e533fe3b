package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;

/** A header that cannot be used stops the run with one clear sentence. */
class HeaderTest {

    private static void assertRefused(Program run, String... words) {
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words).hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"id", "method", "vessel", "fluid", "contents"})
    void lacksARequiredColumn(String column) {
        String header = ("," + Program.HEADER + ",").replace("," + column + ",", ",");

        assertRefused(Program.size(header.substring(1, header.length() - 1)), "lacks the column " + column);
    }

    @ParameterizedTest
    @CsvSource({"volume", "Contents", "'cold pressure'", "''"})
    void hasAnUnknownColumn(String column) {
        assertRefused(
                Program.size(Program.HEADER + "," + column + "\n"),
                "unknown column \"" + column + "\"",
                "the columns are id, method, vessel");
    }

    @Test
    void hasAColumnTwice() {
        assertRefused(Program.size(Program.HEADER + ",hot\n"), "the column hot twice");
    }

    @Test
    void isMissing() {
        assertRefused(Program.size(""), "empty", "id, method, vessel, fluid, contents");
    }

    @Test
    void isNotUtf8() {
        assertRefused(Program.size(Program.HEADER.getBytes(StandardCharsets.UTF_16)), "UTF-8");
    }

    @Test
    void hasAQuoteOutOfPlace() {
        assertRefused(Program.size("\"" + Program.HEADER + "\n"), "double quote");
    }

    @Test
    void mayHaveBlanksAroundItsNames() {
        assertThat(Program.size(Program.HEADER.replace(",", " , ")).status()).isZero();
    }
}
