package org.ullage.examples.records;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ullage.examples.Program;
import org.ullage.record.ServiceBook;

class RecordCommandTest {

    @TempDir
    private Path folder;

    private String book = "";

    @BeforeEach
    void aRecordOfTheInventedBuilding() {
        Program.run("demo", "--pages", folder.toString());
        book = folder.resolve("quillbrook-yard.json").toString();
    }

    @Test
    void printsTheRecordItsTagsTrendAndCheckList() {
        assertThat(Program.run("record", book).out()).contains("Quillbrook Yard", "2024-10-02");
        assertThat(Program.run("record", book, "--tag").out().lines()).allMatch(line -> line.length() <= 40);
        assertThat(Program.run("record", book, "--trend", "--altitude", "420 m", "--units", "IP")
                        .out())
                .contains("loss a year", "psi", "95 % confidence");
        assertThat(Program.run("record", book, "--check-list", "--gas", "4 degC")
                        .out())
                .contains("[ ] Vessel V1: read the charge and compare", "as today");
    }

    @Test
    void addsAVisitAndKeepsWhatItDoesNotKnow() throws IOException {
        Path visit = folder.resolve("visit.json");
        Files.writeString(visit, """
                {"date": "2026-10-05", "by": "N. Ferro (invented)", "weather": "rain",
                 "charges": [{"vessel": "V1", "waterSideAtZero": true, "found": "0.97 bar", "gasTemperature": "13 degC"}]}
                """);
        Program longer = Program.run("record", book, "--add", visit.toString());
        assertThat(longer.err()).isEmpty();
        ServiceBook read = new ObjectMapper().readValue(longer.out(), ServiceBook.class);
        assertThat(read.visits()).hasSize(4);
        assertThat(longer.out()).contains("\"weather\" : \"rain\"");
    }

    @Test
    void badFilesAreNamedWithLineAndPlace() throws IOException {
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, Files.readString(Path.of(book)).replace("\"80.0 L\"", "\"eighty\""));
        Program refused = Program.run("record", bad.toString());
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).containsPattern("line [0-9]+, commissioning.vessels\\[0].nominal: \"eighty\" cannot");
        Files.writeString(bad, "{\"schema\": ");
        assertThat(Program.run("record", bad.toString()).err()).contains("line 1, ");
        assertThat(Program.run("record", folder.resolve("none.json").toString()).err())
                .contains("there is no such file");
    }

    /** Text with markup in every place a person may fill in must come out as text. */
    @Test
    void hostileTextIsEscapedOnThePage() throws IOException {
        Path hostile = folder.resolve("hostile.json");
        Files.writeString(
                hostile,
                Files.readString(Path.of(book))
                        .replace("Quillbrook Yard", "<script>alert(1)</script> & \\u202E ]]> \\u0000"));
        Path page = folder.resolve("page.html");
        Program written = Program.run("record", hostile.toString(), "--html", page.toString(), "--tag");
        assertThat(written.status()).isZero();
        assertThat(Files.readString(page)).doesNotContain("<script>alert").contains("&lt;script&gt;alert(1)");
    }
}
