package org.ullage.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The README shows what the program really prints, and the sample file is answered whole. */
class ReadmeTest {

    private static final Path SAMPLE = Path.of("loops.csv");

    /** A command in a block of its own and the next block, its output; dots on the last line stand for the rest. */
    private static final Pattern COMMAND_AND_OUTPUT = Pattern.compile(
            "```sh\njava -jar examples/target/ullage-examples.jar ([^\n]*)\n```\n.*?```text\n(.*?)```", Pattern.DOTALL);

    private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|\\S+");

    private static final String REST = "...\n";

    private static List<MatchResult> shown() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        return COMMAND_AND_OUTPUT.matcher(readme).results().toList();
    }

    @Test
    void showsTheCommands() throws IOException {
        assertThat(shown())
                .extracting(command -> command.group(1))
                .containsExactly(
                        "demo",
                        "size examples/loops.csv",
                        "contents --text examples/takeoff.csv",
                        "choose examples/loops.csv --id \"Quillbrook Yard, radiators\" --catalogue examples/catalogue.csv"
                                + " --at-vessel \"60 degC\"",
                        "charge examples/loops.csv --id \"Quillbrook Yard, radiators\" --nominal \"80 L\" --air \"8 degC\""
                                + " --water \"12 degC\" --found \"1.5 bar\" --found-at \"8 degC\" --gauge \"10 bar\""
                                + " --class \"class 2.5\"",
                        "support examples/supports.csv",
                        "plot examples/loops.csv --id \"Quillbrook Yard, radiators\" --nominal \"110 L\" --fill \"1.35 bar\""
                                + " --fill-at \"14 degC\"",
                        "diagnose examples/loops.csv --id \"Quillbrook Yard, radiators\" --nominal \"110 L\" --fill \"1.35 bar\""
                                + " --fill-at \"14 degC\" --cold \"1.4 bar\" --cold-at \"18 degC\" --hot \"2.75 bar\" --hot-at"
                                + " \"62 degC\" --gauge \"4 bar\" --class \"class 1\" --sign relief-drips-hot",
                        "methods",
                        "methods examples/loops.csv --id \"Cobble Mill\"",
                        "explain examples/loops.csv --id \"Quillbrook Yard, radiators\" --from en-12828 --to ashrae --average",
                        "fluids \"ethylene glycol 40 vol%\" --from \"4.4 degC\" --to \"93.3 degC\"",
                        "fluids \"propylene glycol 30 vol%\" --loop examples/loops.csv --id \"Highmoor cold store\"",
                        "sweep examples/loops.csv --id \"Quillbrook Yard, radiators\" --down \"hot=60 degC..90 degC\""
                                + " --across \"static_head=5 m..17 m\"");
    }

    @Test
    void showsTheirOutput() throws IOException {
        for (MatchResult command : shown()) {
            String printed = Program.run(words(command.group(1).replace("examples/", "")))
                    .out()
                    .replace("\r\n", "\n");
            String text = command.group(2);

            if (text.endsWith(REST)) {
                assertThat(printed).startsWith(text.substring(0, text.length() - REST.length()));
            } else {
                assertThat(printed).isEqualTo(text);
            }
        }
    }

    /** The words of a command line, those in double quotes as one. */
    private static String[] words(String commandLine) {
        return WORD.matcher(commandLine)
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toArray(String[]::new);
    }

    @Test
    void theSampleIsAnsweredWhole() {
        Program sample = Program.run("size", SAMPLE.toString());

        assertThat(sample.status()).isZero();
        assertThat(sample.rows()).isNotEmpty().allSatisfy(row -> assertThat(row).containsEntry("error", ""));
    }

    @Test
    void theSampleShowsMostOfTheContract() throws IOException {
        String sample = Files.readString(SAMPLE);

        assertThat(sample).startsWith(Program.HEADER + "\n");
        assertThat(sample)
                .contains(",open,", ",plain-steel,", "glycol", " abs,", ",5000 ft\n", " gal,", " L,", " ft3,");
    }
}
