package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class ReportPrintersTest {

    private static final String CASES = """
            id,question,inputs,stated,tolerance,tolerance_reason,verdict,corrected,corrected_tolerance,explanation,provenance,document,place,reading
            A,required volume,water=2 gal,5.44 gal,0.005 gal,half a digit,agrees,,,,published,"<b>Law</b> | ""A"" & B",table_1,
            B,required volume,water=3 gal,9 gal,0.5 gal,half a digit,differs,10 gal,0.5 gal,a slip,from_memory,Book,,
            C,required volume,water=4 gal,,,,refused,,,too much,computed,Rule,,
            """;

    private final ReferenceReport report = ReferenceRun.of(
            question -> Optional.of(Answer.of(
                    Volume.gallons(5.4449 * question.volume(Input.WATER).in(Units.US_GALLON) / 2))),
            List.copyOf(ReferenceCases.read("own.csv", new StringReader(CASES))));

    @Test
    void markdownTableOfCases() {
        assertThat(MarkdownReport.of(report))
                .contains(
                        "| A | required volume: water=2 gal | \\<b\\>Law\\</b\\> \\| \"A\" & B, table\\_1 | 5.44 gal | 5.4449 gal |"
                                + " +0.0049 | 0.005 gal (half a digit) | PUBLISHED | agrees | passed |");
    }

    @Test
    void accuracyTable() {
        assertThat(MarkdownReport.accuracyTable(report)).isEqualTo("""
                        | file | cases | agree | differ (explained) | refused | worst relative difference |
                        | --- | --- | --- | --- | --- | --- |
                        | own.csv | 3 | 1 | 0 | 0 | 9.0e-04 |
                        """);
    }

    @Test
    void textNamesFailures() {
        assertThat(TextReport.of(report))
                .contains("Summary: 3 cases: 1 passed, 2 failed, 0 not answered.")
                .contains(
                        "B   required volume: water=3 gal  gives 8.167 gal, which is -1.8 from 10 gal (tolerance 0.5 gal)")
                .contains("answered where it must refuse: too much");
    }

    @Test
    void htmlIsEscapedAndNeedsNothingElse() {
        String page = HtmlReport.of(report);
        assertThat(page)
                .startsWith("<!DOCTYPE html>")
                .contains("&lt;b&gt;Law&lt;/b&gt; | &quot;A&quot; &amp; B")
                .doesNotContain("<b>")
                .doesNotContain("src=")
                .doesNotContain("http");
    }

    @Test
    void htmlMarksFailedCasesAndNothingElse() {
        String page = HtmlReport.of(report);
        assertThat(page).contains("<tr class=\"differs failed\"><td class=\"short\">B</td>");
        assertThat(page.split("<tr class=", -1)).hasSize(3);
    }
}
