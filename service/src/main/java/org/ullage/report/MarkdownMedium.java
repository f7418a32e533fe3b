package org.ullage.report;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Markdown: CommonMark with tables. Not for many threads. */
final class MarkdownMedium implements Medium {

    private final StringBuilder text = new StringBuilder();
    private final @Nullable String chartFiles;
    private int charts;

    private MarkdownMedium(@Nullable String chartFiles) {
        this.chartFiles = chartFiles;
    }

    static MarkdownMedium withoutCharts() {
        return new MarkdownMedium(null);
    }

    static MarkdownMedium withCharts(String chartFiles) {
        return new MarkdownMedium(chartFiles);
    }

    /** The path of a chart by its number on the page, from 1. */
    static String file(String chartFiles, int number) {
        return chartFiles + number + ".svg";
    }

    String text() {
        return text.toString();
    }

    @Override
    public void title(String title) {
        text.append("# ").append(MarkdownText.cell(title)).append('\n');
    }

    @Override
    public void heading(Heading heading) {
        gap();
        text.append(heading.isSubsection() ? "### " : "## ")
                .append(MarkdownText.cell(heading.text()))
                .append('\n');
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        gap();
        text.append(MarkdownText.line(paragraph.text())).append('\n');
    }

    @Override
    public void list(BulletList list) {
        gap();
        list.items().forEach(this::bullet);
    }

    private void bullet(String item) {
        text.append("- ").append(MarkdownText.line(item)).append('\n');
    }

    @Override
    public void table(Table table) {
        gap();
        row(table.columns().stream().map(Column::header).toList());
        text.append(table.columns().stream()
                .map(column -> column.isNumeric() ? " ---: |" : " --- |")
                .collect(Collectors.joining("", "|", "\n")));
        table.rows().forEach(this::row);
    }

    private void row(List<String> cells) {
        text.append(cells.stream()
                .map(cell -> " " + MarkdownText.cell(cell) + " |")
                .collect(Collectors.joining("", "|", "\n")));
    }

    @Override
    public void cautions(CautionList cautions) {
        gap();
        cautions.cautions()
                .forEach(caution -> text.append("- **")
                        .append(MarkdownText.line(caution.text()))
                        .append("** ")
                        .append(MarkdownText.cell(caution.source().toString()))
                        .append('\n'));
        if (cautions.cautions().isEmpty()) {
            text.append(CautionList.NONE).append('\n');
        }
    }

    @Override
    public void preformatted(Preformatted preformatted) {
        gap();
        text.append(MarkdownText.fenced(preformatted.text()));
    }

    @Override
    public void chart(Chart chart) {
        gap();
        charts++;
        String title = MarkdownText.cell(chart.title());
        if (chartFiles == null) {
            text.append("Chart left out here: ").append(title).append('\n');
        } else {
            text.append("![")
                    .append(title)
                    .append("](")
                    .append(MarkdownText.address(file(chartFiles, charts)))
                    .append(")\n");
        }
        gap();
        text.append(MarkdownText.line(chart.description())).append('\n');
    }

    private void gap() {
        text.append('\n');
    }
}
