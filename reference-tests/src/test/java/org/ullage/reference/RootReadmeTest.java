package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The accuracy table in the project's README is the one that the cases give. */
class RootReadmeTest {

    private static final Path README = Path.of("../README.md");

    private static final String BEGIN = "<!-- accuracy -->";

    private static final String END = "<!-- /accuracy -->";

    @Test
    void accuracyTableIsUpToDate() throws IOException {
        assumeTrue(Files.exists(README), "no README beside the modules");
        String readme = Files.readString(README);
        assertThat(readme)
                .as("README.md needs the accuracy table between these marks")
                .contains(BEGIN, END);
        String table = MarkdownReport.accuracyTable(ReferenceRun.of(new UllageImplementation()));
        assertThat(readme.substring(readme.indexOf(BEGIN) + BEGIN.length(), readme.indexOf(END))
                        .strip())
                .as("accuracy table of README.md")
                .isEqualTo(table.strip());
    }
}
