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
    private static final int LONGEST_ECHO = 60;

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
        if (end(plain, 0, width) == plain.length()) {
            return plain;
        }
        return plain.substring(0, end(plain, 0, width - CUT_OFF.length())).stripTrailing() + CUT_OFF;
    }

    /** A caller's text as a message or a line repeats it. */
    static String shortened(String text) {
        return cut(text, LONGEST_ECHO);
    }

    /** The same in quotes. */
    static String quoted(String text) {
        return "\"" + shortened(text) + "\"";
    }

    /** Plain, broken at blanks into lines no wider than a width. */
    static List<String> wrapped(String text, int width) {
        String plain = of(text);
        List<String> lines = new ArrayList<>();
        int start = 0;
        int end = end(plain, 0, width);
        while (end < plain.length()) {
            int blank = plain.lastIndexOf(' ', end);
            boolean breaks = blank > start;
            lines.add(plain.substring(start, breaks ? blank : end));
            start = breaks ? blank + 1 : end;
            end = end(plain, start, width);
        }
        lines.add(plain.substring(start));
        return lines;
    }

    /** Where a line of a width that begins at a place ends. */
    private static int end(String text, int start, int width) {
        int end = start;
        int taken = 0;
        while (end < text.length()) {
            int codePoint = text.codePointAt(end);
            taken += width(codePoint);
            if (taken > width) {
                break;
            }
            end += Character.charCount(codePoint);
        }
        return end;
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
