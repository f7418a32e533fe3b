package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Provenance;

/** Runs all cases and writes {@code target/reference-report.md} and {@code .html}. */
class ReferenceReportTest {

    private final ReferenceReport report = ReferenceRun.of(new UllageImplementation());

    @Test
    void isWrittenAndClean() throws IOException {
        Path target = Files.createDirectories(Path.of("target"));
        Files.writeString(target.resolve("reference-report.md"), MarkdownReport.of(report, PublishedTrials.ALL));
        Files.writeString(target.resolve("reference-report.html"), HtmlReport.of(report, PublishedTrials.ALL));

        assertThat(report.failures())
                .as("failing cases")
                .extracting(result -> result.id() + ": " + result.remark())
                .isEmpty();
        assertThat(report.total().notAnswered()).as("cases not answered").isZero();
        assertThat(report.isClean()).isTrue();
    }

    @Test
    void countsEveryCaseOnceByFileVerdictAndProvenance() {
        int cases = ReferenceCases.all().size();
        assertThat(report.total().cases()).isEqualTo(cases);
        assertThat(report.byFile()).extracting(FileSummary::file).containsExactlyElementsOf(ReferenceCases.files());
        assertThat(report.byFile().stream()
                        .mapToInt(file -> file.tally().cases())
                        .sum())
                .isEqualTo(cases);
        assertThat(report.byFile())
                .allSatisfy(file -> assertThat(file.agree() + file.differ() + file.refused())
                        .isEqualTo(file.tally().passed()));
        assertThat(report.byVerdict().values().stream().mapToInt(Tally::cases).sum())
                .isEqualTo(cases);
        assertThat(report.byProvenance().values().stream()
                        .mapToInt(Tally::cases)
                        .sum())
                .isEqualTo(cases);
        assertThat(report.byProvenance())
                .containsKeys(Provenance.PUBLISHED, Provenance.COMPUTED, Provenance.FROM_MEMORY);
    }

    @Test
    void explainsEveryMisprint() {
        assertThat(report.misprints()).isNotEmpty();
        String markdown = MarkdownReport.of(report);
        String misprints = markdown.substring(markdown.indexOf("## Misprints"), markdown.indexOf("## ashrae.csv"));
        assertThat(report.misprints())
                .allSatisfy(
                        result -> assertThat(misprints).contains(result.id()).contains(result.statedText()));
        assertThat(misprints).contains("Rounded down from the formula");
    }
}
