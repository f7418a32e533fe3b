package org.ullage.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.method.Method;
import org.ullage.published.Methods;
import org.ullage.vessel.VesselKind;

class UllageTest {

    private final Locale usual = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(usual);
    }

    @Test
    void helpNamesTheCommandsAndTheExitStatus() {
        Program help = Program.run("--help");

        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out())
                .contains("contents", "demo", "size", "Exit status:", "0   ", "1   ", "2   ", "licensed person");
    }

    @Test
    void helpOfSizeExplainsEveryColumnMethodAndVessel() {
        Program help = Program.run("size", "--help");

        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).contains(Program.HEADER.split(",", -1));
        assertThat(help.out()).contains("--workings", "--methods", "- reads standard input", "Exit status:");
        assertThat(help.out()).contains(Methods.all().stream().map(Method::name).toList());
        for (VesselKind kind : VesselKind.values()) {
            assertThat(help.out()).contains(kind.word());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "size --help",
                "contents --help",
                "demo --help",
                "methods --help",
                "explain --help",
                "fluids --help",
                "demo"
            })
    void printsPlainAsciiOfAtMostAHundredColumns(String arguments) {
        String out = Program.run(arguments.split(" ", -1)).out();

        assertThat(out).isNotEmpty();
        assertThat(out.lines()).allSatisfy(line -> assertThat(line).matches("[ -~]{0,100}"));
    }

    @Test
    void tellsItsVersion() {
        Program version = Program.run("--version");

        assertThat(version.status()).isZero();
        assertThat(version.out()).matches("Ullage [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)?\\R");
    }

    @Test
    void asksForACommand() {
        Program none = Program.run();

        assertThat(none.status()).isEqualTo(2);
        assertThat(none.out()).isEmpty();
        assertThat(none.err())
                .contains(
                        "charge, choose, contents, demo, diagnose, explain, fluids, methods, plot, record, size, support or sweep",
                        "ullage --help");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "size",
                "size --wrong a.csv",
                "size a.csv b.csv",
                "contents",
                "contents --ip=1 a.csv",
                "shrink",
                "demo page"
            })
    void refusesACommandLineItDoesNotKnow(String arguments) {
        Program refused = Program.run(arguments.split(" ", -1));

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("--help").hasLineCount(2);
    }

    @Test
    void printsTheSameDemonstrationInEveryLocale() {
        String here = Program.run("demo").out();
        Locale.setDefault(Locale.forLanguageTag("de-CH"));

        assertThat(Program.run("demo").out()).isEqualTo(here);
    }
}
