package org.ullage.reference;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Prints a report as one HTML page that needs nothing else. */
public final class HtmlReport {

    private static final String STYLE = """
            :root { color-scheme: light dark; }
            body { font: 15px/1.45 system-ui, sans-serif; margin: 2rem auto; max-width: 90rem; padding: 0 1rem; }
            h1, h2 { line-height: 1.2; }
            h2 { margin-top: 2.5rem; border-bottom: 1px solid #8888; }
            table { border-collapse: collapse; font-size: 13px; }
            th, td { text-align: left; vertical-align: top; padding: 0.25rem 0.6rem; border-bottom: 1px solid #8884; }
            th { position: sticky; top: 0; background: Canvas; }
            td { font-variant-numeric: tabular-nums; overflow-wrap: break-word; max-width: 26rem; }
            tr.failed { background: #d3382f33; }
            tr.differs td:nth-child(4) { text-decoration: line-through; }
            .short { white-space: nowrap; }
            .scroll { overflow-x: auto; }
            """;

    private static final Map<String, String> ROW_CLASSES =
            Map.of(Outcome.FAILED.toString(), "failed", Verdict.DIFFERS.word(), Verdict.DIFFERS.word());

    /** A cell of no more characters than this stays on one line. */
    private static final int LONGEST_UNBROKEN = 22;

    private HtmlReport() {}

    /**
     * The whole report: summary, counts, failures, misprints and every case.
     *
     * @param report the report
     * @return a page in HTML 5, all text escaped
     */
    public static String of(ReferenceReport report) {
        return of(report, List.of());
    }

    /**
     * The whole report, and what trials of the diagnosis gave.
     *
     * @param report the report
     * @param trials a confusion matrix of each is printed
     * @return a page in HTML 5, all text escaped
     */
    public static String of(ReferenceReport report, List<FaultTrial> trials) {
        List<Section> sections = Sections.whole(report, trials);
        StringBuilder page = new StringBuilder(
                        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escaped(Sections.TITLE))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(escaped(Sections.TITLE))
                .append("</h1>\n<nav>");
        sections.forEach(section -> page.append(link(section)));
        page.append("</nav>\n");
        sections.forEach(section -> append(page, section));
        return page.append("</body>\n</html>\n").toString();
    }

    private static String link(Section section) {
        return "<a href=\"#" + anchor(section) + "\">" + escaped(section.title()) + "</a> ";
    }

    private static String anchor(Section section) {
        return section.title().replaceAll("[^A-Za-z0-9]+", "-");
    }

    private static void append(StringBuilder page, Section section) {
        page.append("<h2 id=\"").append(anchor(section)).append("\">").append(escaped(section.title()));
        page.append("</h2>\n");
        if (!section.text().isEmpty()) {
            page.append("<p>").append(escaped(section.text())).append("</p>\n");
        }
        if (!section.rows().isEmpty()) {
            page.append("<div class=\"scroll\"><table>\n<thead>");
            appendRow(page, "<tr>", "th", section.header());
            page.append("</thead>\n<tbody>\n");
            section.rows().forEach(row -> appendRow(page, rowStart(row), "td", row));
            page.append("</tbody>\n</table></div>\n");
        }
    }

    /** Verdict and outcome are the last two cells of a case. */
    private static String rowStart(List<String> row) {
        String classes = row.subList(row.size() - 2, row.size()).stream()
                .filter(ROW_CLASSES::containsKey)
                .map(ROW_CLASSES::get)
                .collect(Collectors.joining(" "));
        return classes.isEmpty() ? "<tr>" : "<tr class=\"" + classes + "\">";
    }

    private static void appendRow(StringBuilder page, String start, String tag, List<String> cells) {
        page.append(start);
        for (String cell : cells) {
            page.append('<').append(tag).append(cell.length() > LONGEST_UNBROKEN ? ">" : " class=\"short\">");
            page.append(escaped(cell)).append("</").append(tag).append('>');
        }
        page.append("</tr>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
