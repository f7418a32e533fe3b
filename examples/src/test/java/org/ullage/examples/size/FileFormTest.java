package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;

/** How the file may be written, and what is said of one that cannot be read. */
class FileFormTest {

    private static final String GOOD = ",ashrae,bladder,water,1000 L,10 degC,80 degC,steel,1.2 bar,2.7 bar,,,,";
    private static final String FILE = Program.HEADER + "\na" + GOOD + "\nb" + GOOD + "\n";

    @Test
    void aByteOrderMarkChangesNothing() {
        assertThat(Program.size("\uFEFF" + FILE)).isEqualTo(Program.size(FILE));
    }

    @Test
    void windowsLineBreaksChangeNothing() {
        assertThat(Program.size(FILE.replace("\n", "\r\n"))).isEqualTo(Program.size(FILE));
    }

    @Test
    void aMissingLastLineBreakOrBlankLinesChangeNothing() {
        assertThat(Program.size(FILE.stripTrailing())).isEqualTo(Program.size(FILE));
        assertThat(Program.size(FILE.replace("\n", "\n\n"))).isEqualTo(Program.size(FILE));
    }

    @Test
    void quotesAndBlanksAroundCellsChangeNothing() {
        String quoted = FILE.replace(",water,", ",\"water\",").replace(",1000 L,", ", 1000 L ,");

        assertThat(Program.size(quoted)).isEqualTo(Program.size(FILE));
    }

    @Test
    void readsAFileAsStandardInput(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("loops.csv"), FILE);

        assertThat(Program.run("size", file.toString())).isEqualTo(Program.size(FILE));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  spaced  ",
                "7",
                "=1+1",
                "a,b",
                "say \"so\"",
                "two\nlines",
                "three\r\nlines\r\n",
                "\"",
                "'",
                "#not a comment",
                "\t",
                "Geb\u00E4ude \u6C34 \uD83D\uDEBF",
                "\u001B[31mred",
                "| joined |",
                "-",
                "--help",
                "\\",
                "${id}",
                "%n"
            })
    void repeatsAnIdAsItIs(String id) {
        Program run = Program.size(Program.HEADER + "\n\"" + id.replace("\"", "\"\"") + "\"" + GOOD + "\n");

        assertThat(run.row()).containsEntry("id", id).containsEntry("error", "");
    }

    @Test
    void anIdWithControlCharactersCannotBreakThePageOfWorkings() {
        Program run = Program.size(Program.HEADER + "\n\"a\n\u001B[31mb\"" + GOOD + "\n", "--workings");

        assertThat(run.out()).contains("\r\n\na??[31mb\n");
    }

    @Test
    void standardOutputIsUtf8() {
        byte[] file = (Program.HEADER + "\nGeb\u00E4ude" + GOOD).getBytes(StandardCharsets.UTF_8);

        assertThat(Program.size(file).out()).contains("Geb\u00E4ude,");
    }

    @Test
    void refusesAFileThatIsNotThere() {
        Program run = Program.run("size", "nowhere/loops.csv");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("nowhere/loops.csv", "no such file").hasLineCount(1);
    }

    @Test
    void refusesAFolder(@TempDir Path folder) {
        Program run = Program.run("size", folder.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(folder.toString()).hasLineCount(1);
    }
}
