package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ReadmeExampleTest {

    private static final Path SOURCE = Path.of("src/test/java/org/ullage/reference/ReadmeExample.java");

    @Test
    void runsAndPassesWhatItAnswers() {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        ReferenceReport report;
        try {
            report = ReadmeExample.check();
        } finally {
            System.setOut(console);
        }
        assertThat(report.isClean()).isTrue();
        assertThat(report.total().passed()).isGreaterThanOrEqualTo(4);
        assertThat(printed.toString(StandardCharsets.UTF_8))
                .contains("not answered")
                .contains("gas-law.csv");
    }

    @Test
    void isTheOneInTheReadme() throws IOException {
        String source = Files.readString(SOURCE).split("        // README\n", -1)[1];
        assertThat(Files.readString(Path.of("README.md")))
                .contains("```java\n" + source.stripTrailing().stripIndent() + "\n```");
    }
}
