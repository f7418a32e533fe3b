package org.ullage.reference;

import java.util.List;
import java.util.stream.Collectors;

/** Prints a report as Markdown with pipe tables. */
public final class MarkdownReport {

    private MarkdownReport() {}

    /**
     * The whole report: summary, counts, failures, misprints and every case.
     *
     * @param report the report
     * @return Markdown
     */
    public static String of(ReferenceReport report) {
        return of(report, List.of());
    }

    /**
     * The whole report, and what trials of the diagnosis gave.
     *
     * @param report the report
     * @param trials a confusion matrix of each is printed
     * @return Markdown
     */
    public static String of(ReferenceReport report, List<FaultTrial> trials) {
        StringBuilder text = new StringBuilder("# ").append(Sections.TITLE).append("\n");
        for (Section section : Sections.whole(report, trials)) {
            text.append("\n## ").append(section.title()).append("\n");
            if (!section.text().isEmpty()) {
                text.append("\n").append(escaped(section.text())).append("\n");
            }
            if (!section.rows().isEmpty()) {
                text.append("\n").append(table(section));
            }
        }
        return text.toString();
    }

    /**
     * The accuracy table alone, for a README: per file the cases, how many agree, differ with an explanation and are refused, and
     * the worst relative difference.
     *
     * @param report the report
     * @return a Markdown table, each line ended by a line feed
     */
    public static String accuracyTable(ReferenceReport report) {
        return table(Sections.byFile(report));
    }

    /**
     * The outcome of trials of the diagnosis, for a README: per fault the percentages named, left open and mistaken, and how often
     * the fault was the likeliest.
     *
     * @param trials the trials
     * @return a Markdown table, each line ended by a line feed
     */
    public static String trialTable(List<FaultTrial> trials) {
        return table(TrialSections.compact(trials));
    }

    private static String table(Section section) {
        StringBuilder table = new StringBuilder(line(section.header()));
        table.append(line(section.header().stream().map(column -> "---").toList()));
        section.rows().forEach(row -> table.append(line(row)));
        return table.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(MarkdownReport::escaped).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static String escaped(String cell) {
        return cell.replaceAll("([\\\\|<>_*`\\[\\]])", "\\\\$1").replaceAll("\\s+", " ");
    }
}
