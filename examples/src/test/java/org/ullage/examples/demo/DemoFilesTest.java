package org.ullage.examples.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;
import org.ullage.record.ServiceBook;

class DemoFilesTest {

    @TempDir
    private Path folder;

    /** Out of date? Run the command that stands in the README: demo --charts docs. */
    @ParameterizedTest
    @ValueSource(strings = {"method-comparison.svg", "operating-curve.svg"})
    void theChartsOfTheReadmeAreThoseOfTheProgram(String chart) throws IOException {
        Program demo = Program.run("demo", "--pages", folder.toString(), "--charts", folder.toString());
        assertThat(demo.status()).isZero();
        assertThat(Files.readString(folder.resolve(chart)))
                .isEqualTo(Files.readString(Path.of("..", "docs", chart)).replace("\r\n", "\n"));
    }

    @Test
    void writesAPageThatStandsAloneAndARecordThatReadsBack() throws Exception {
        Program.run("demo", "--pages", folder.toString());
        Path page = folder.resolve("quillbrook-yard.html");
        DocumentBuilderFactory reader = DocumentBuilderFactory.newInstance();
        reader.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        assertThat(reader.newDocumentBuilder()
                        .parse(page.toFile())
                        .getElementsByTagName("svg")
                        .getLength())
                .isGreaterThanOrEqualTo(3);
        assertThat(Files.readString(page)).doesNotContain("<script").contains("invented");
        ServiceBook book = new ObjectMapper()
                .readValue(folder.resolve("quillbrook-yard.json").toFile(), ServiceBook.class);
        assertThat(book).isEqualTo(DemoStory.told().book());
    }

    @Test
    void aFolderThatCannotBeMadeIsNamed() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Program demo = Program.run("demo", "--pages", file.toString());
        assertThat(demo.status()).isEqualTo(2);
        assertThat(demo.err()).contains("could not be written");
    }
}
