package org.ullage.reference;

import java.util.ArrayList;
import java.util.List;

/** Prints the summary of a report as aligned text for a terminal: counts, failures, the likely mistake and misprints, without every case. */
public final class TextReport {

    private static final int LONGEST_ALIGNED = 40;

    private TextReport() {}

    /**
     * The summary.
     *
     * @param report the report
     * @return several lines, each ended by a line feed
     */
    public static String of(ReferenceReport report) {
        StringBuilder text = new StringBuilder(Sections.TITLE).append('\n');
        for (Section section : Sections.summary(report)) {
            text.append('\n')
                    .append(section.title())
                    .append(": ")
                    .append(section.text())
                    .append('\n');
            appendTable(text, section);
        }
        return text.toString();
    }

    private static void appendTable(StringBuilder text, Section section) {
        if (section.rows().isEmpty()) {
            return;
        }
        List<List<String>> lines = new ArrayList<>(section.rows());
        lines.add(0, section.header());
        int[] widths = widths(lines);
        for (List<String> line : lines) {
            StringBuilder row = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                row.append("  ").append(padded(line.get(i), widths[i]));
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
    }

    /** Long cells do not widen their column. */
    private static int[] widths(List<List<String>> lines) {
        int[] widths = new int[lines.get(0).size()];
        for (List<String> line : lines) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(
                        widths[i], Math.min(LONGEST_ALIGNED, line.get(i).length()));
            }
        }
        return widths;
    }

    private static String padded(String cell, int width) {
        return cell + " ".repeat(Math.max(0, width - cell.length()));
    }
}
