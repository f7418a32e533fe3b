package org.ullage.report;

import org.ullage.workings.Caution;

/** Plain ASCII text. Not for many threads. */
final class TextMedium implements Medium {

    private static final int WIDTH = 100;

    private static final String BULLET = "- ";

    private final StringBuilder text = new StringBuilder();

    String text() {
        return text.toString();
    }

    @Override
    public void title(String title) {
        underlined(title, "=");
    }

    @Override
    public void heading(Heading heading) {
        gap();
        underlined(heading.text(), heading.isSubsection() ? "." : "-");
    }

    private void underlined(String words, String stroke) {
        int from = text.length();
        line(AsciiText.line(words), 0);
        int longest =
                text.substring(from).lines().mapToInt(String::length).max().orElse(0);
        text.append(stroke.repeat(longest)).append('\n');
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        gap();
        line(AsciiText.line(paragraph.text()), 0);
    }

    @Override
    public void list(BulletList list) {
        gap();
        list.items().forEach(this::bullet);
    }

    private void bullet(String item) {
        line(BULLET + AsciiText.line(item), BULLET.length());
    }

    @Override
    public void table(Table table) {
        gap();
        text.append(TextGrid.of(table, WIDTH));
    }

    @Override
    public void cautions(CautionList cautions) {
        gap();
        cautions.cautions().stream().map(Caution::toString).forEach(this::bullet);
        if (cautions.cautions().isEmpty()) {
            line(CautionList.NONE, 0);
        }
    }

    @Override
    public void preformatted(Preformatted preformatted) {
        gap();
        AsciiText.lines(preformatted.text())
                .lines()
                .forEach(line -> line(line, WrappedText.leadingBlanks(line) + BULLET.length()));
    }

    @Override
    public void chart(Chart chart) {
        gap();
        line("Chart: " + AsciiText.line(chart.title()), 0);
        line(AsciiText.line(chart.description()), 0);
    }

    private void gap() {
        text.append('\n');
    }

    private void line(String ascii, int indent) {
        WrappedText.of(ascii, WIDTH, indent).forEach(line -> text.append(line).append('\n'));
    }
}
