package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Texts as they are printed: on one line, free of what a reader cannot see, and within a width. Letters of any script stay; one that takes
 * two places on most devices is counted as two.
 */
final class PlainText {

    /** Characters of a caller's text that a message repeats. */
    static final int LONGEST_ECHO = 60;

    private static final String CUT_OFF = "...";

    private static final Set<Character.UnicodeBlock> WIDE_BLOCKS = Set.of(
            Character.UnicodeBlock.HALFWIDTH_AND_FULLWIDTH_FORMS, Character.UnicodeBlock.CJK_SYMBOLS_AND_PUNCTUATION);

    private PlainText() {}

    /** Without control and direction marks, line ends made blanks, runs of blanks made one. */
    static String of(String text) {
        StringBuilder plain = new StringBuilder();
        text.codePoints().forEach(codePoint -> append(plain, codePoint));
        return plain.toString().strip();
    }

    private static void append(StringBuilder plain, int codePoint) {
        if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
            if (!plain.isEmpty() && plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
            }
        } else if (isSeen(codePoint)) {
            plain.appendCodePoint(codePoint);
        }
    }

    private static boolean isSeen(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }

    /** Plain and no wider than a width; what is cut off is shown by three points. */
    static String cut(String text, int width) {
        String plain = of(text);
        return width(plain) <= width
                ? plain
                : head(plain, width - CUT_OFF.length()).stripTrailing() + CUT_OFF;
    }

    /** Plain, broken at blanks into lines no wider than a width. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        String rest = of(text);
        String head = head(rest, width);
        while (head.length() < rest.length()) {
            boolean breaksHere = rest.charAt(head.length()) == ' ';
            int blank = breaksHere ? head.length() : head.lastIndexOf(' ');
            String line = blank > 0 ? rest.substring(0, blank) : head;
            lines.add(line.stripTrailing());
            rest = rest.substring(line.length()).stripLeading();
            head = head(rest, width);
        }
        lines.add(rest);
        return lines;
    }

    private static String head(String text, int width) {
        int end = 0;
        int taken = 0;
        while (end < text.length()) {
            int codePoint = text.codePointAt(end);
            taken += width(codePoint);
            if (taken > width) {
                break;
            }
            end += Character.charCount(codePoint);
        }
        return text.substring(0, end);
    }

    static int width(String text) {
        return text.codePoints().map(PlainText::width).sum();
    }

    private static int width(int codePoint) {
        return Character.isSupplementaryCodePoint(codePoint) || isWideScript(codePoint) ? 2 : 1;
    }

    private static boolean isWideScript(int codePoint) {
        if (WIDE_BLOCKS.contains(Character.UnicodeBlock.of(codePoint))) {
            return true;
        }
        return switch (Character.UnicodeScript.of(codePoint)) {
            case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
            default -> false;
        };
    }
}
