package org.ullage.report;

import java.util.ArrayList;
import java.util.List;

/** Lines no longer than a width, broken at blanks, and inside a word only where the word alone is too long. */
final class WrappedText {

    private WrappedText() {}

    /** One line of text as lines; those after the first are indented. */
    static List<String> of(String text, int width, int indent) {
        String line = text.stripTrailing();
        String hang = " ".repeat(Math.min(indent, width / 2));
        List<String> lines = new ArrayList<>();
        int from = 0;
        int first = leadingBlanks(line);
        String before = "";
        while (line.length() - from > width - before.length()) {
            int end = breakOf(line, Math.max(from, first), from + width - before.length());
            lines.add(before + line.substring(from, end).stripTrailing());
            from = end + leadingBlanks(line.substring(end, Math.min(line.length(), end + width)));
            before = hang;
        }
        lines.add(before + line.substring(from));
        return lines;
    }

    /** The last blank up to the furthest place that has something to read before it, or that place. */
    private static int breakOf(String line, int from, int furthest) {
        int blank = line.lastIndexOf(' ', furthest);
        return blank > from ? blank : furthest;
    }

    /** How far a line is indented. */
    static int leadingBlanks(String text) {
        return text.length() - text.stripLeading().length();
    }
}
