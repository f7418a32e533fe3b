package org.ullage.examples.demo;

import java.io.PrintWriter;
import java.util.List;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.UnitSystem;

/** Plain text of at most 100 columns. */
final class Page {

    static final int WIDTH = 100;

    private static final String BULLET = "- ";
    private static final int CONTINUED = 2;
    private static final int LABEL_WIDTH = 44;
    private static final int VALUE_WIDTH = 20;

    private final PrintWriter out;

    Page(PrintWriter out) {
        this.out = out;
    }

    void title(String text) {
        underlined(text, "=");
    }

    void heading(String text) {
        line("");
        underlined(text, "-");
    }

    private void underlined(String text, String stroke) {
        line(text);
        line(stroke.repeat(text.length()));
    }

    /** A line, broken at blanks where it is too long; what follows is indented under it. */
    void line(String text) {
        broken(text, leadingBlanks(text) + CONTINUED);
    }

    /** Running text, broken at blanks. */
    void paragraph(String text) {
        broken(text, 0);
    }

    private void broken(String text, int indent) {
        String rest = text;
        int end = breakOf(rest);
        while (end > 0) {
            write(rest.substring(0, end));
            rest = " ".repeat(indent) + rest.substring(end).stripLeading();
            end = breakOf(rest);
        }
        write(rest);
    }

    /** The last blank that fits, or 0 if the text is short enough or has nothing but blanks before it. */
    private static int breakOf(String text) {
        if (text.length() <= WIDTH) {
            return 0;
        }
        int end = text.lastIndexOf(' ', WIDTH);
        return end > leadingBlanks(text) ? end : 0;
    }

    private static int leadingBlanks(String text) {
        return text.length() - text.stripLeading().length();
    }

    void bullet(String text) {
        line(BULLET + text);
    }

    /** The head of lines with a value in both unit systems. */
    void valueHead() {
        values("", "metric", "inch-pound");
    }

    /** A line with a value in both unit systems. */
    void value(String label, Quantity<?, ?> quantity) {
        values(label, quantity.text(UnitSystem.SI), quantity.text(UnitSystem.IP));
    }

    private void values(String label, String metric, String inchPound) {
        line(padded(label, LABEL_WIDTH) + padded(metric, VALUE_WIDTH) + inchPound);
    }

    /** A line with words in place of a value. */
    void words(String label, String words) {
        line(padded(label, LABEL_WIDTH) + words);
    }

    /** A line of a table; the last cell is not padded. */
    void row(List<String> cells, int... widths) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            text.append(i < widths.length ? padded(cells.get(i), widths[i]) : cells.get(i));
        }
        line(text.toString());
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    /** The line break is the same on every system, so that two pages can be compared. */
    private void write(String text) {
        out.print(text.stripTrailing() + "\n");
    }
}
