package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.examples.Program;
import org.ullage.published.Methods;

class WorkingsOptionTest {

    private static final String LINE = "a,ashrae,bladder,water,%s,40 degF,220 degF,steel,10 psi,25 psi,,,,\n";

    private static Program run(String lines, String... options) {
        return Program.size(Program.HEADER + "\n" + lines, options);
    }

    @Test
    void followTheTableAfterABlankLine() {
        String lines = String.format(LINE, "3000 gal");
        String table = run(lines).out();

        assertThat(run(lines, "--workings").out())
                .startsWith(table + "\na\n")
                .contains("Expansion vessel (bladder) by ASHRAE", "V_s * (e - c)", "[PUBLISHED]");
    }

    @ParameterizedTest
    @CsvSource({"3000 gal,gal", "400 ft3,gal", "11000 L,L", "11 m3,L"})
    void areInTheSystemOfTheContents(String contents, String unit) {
        assertThat(run(String.format(LINE, contents), "--workings").out())
                .containsPattern("V_n +=.*\\n.*\\n +(=) [0-9.]+ " + unit + "\\n");
    }

    @Test
    void showTheAtmosphereThatWasAssumed() {
        String lines = String.format(LINE, "3000 gal");

        assertThat(run(lines, "--workings").out()).contains("101.325 kPa abs, is taken");
        assertThat(run(lines.replace(",,,,\n", ",,,,1500 m\n"), "--workings").out())
                .doesNotContain("is taken");
    }

    @Test
    void showTheSourcesOfWarnings() {
        String lines = String.format(LINE, "3000 gal").replace("steel", "");

        assertThat(run(lines, "--workings").out()).containsPattern("Warning: .* \\[[A-Z_]+\\] ");
    }

    @Test
    void leaveOutTheLinesThatFailed() {
        Program run = run("good" + String.format(LINE, "3000 gal") + "bad" + String.format(LINE, "3000"), "--workings");

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("\ngooda\n").doesNotContain("\nbada\n");
    }

    @Test
    void comeForEveryMethodThatAnswers() {
        String out =
                run(String.format(LINE, "3000 gal"), "--workings", "--methods").out();

        assertThat(List.of(Methods.ASHRAE, Methods.ASME_IV, Methods.EN_12828, Methods.MASS_BALANCE))
                .allSatisfy(method -> assertThat(out).contains("Expansion vessel (bladder) by " + method.title()));
        assertThat(out).doesNotContain("Expansion vessel (bladder) by " + Methods.PRACTICE_FR_OPEN.title());
    }

    @Test
    void areLeftOutWhenNothingWasAnswered() {
        Program run = run("bad" + String.format(LINE, "3000"), "--workings");

        assertThat(run.out()).endsWith("\r\n").hasLineCount(2);
    }
}
