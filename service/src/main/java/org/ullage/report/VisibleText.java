package org.ullage.report;

import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Text from outside, made safe to show: what a reader cannot see, what turns the direction of writing and what XML forbids is replaced
 * by its code point in brackets, such as {@code [U+202E]}.
 */
final class VisibleText {

    /** Marks, embeddings, overrides and isolates of the Unicode Bidirectional Algorithm: they can make a text read differently. */
    private static final String DIRECTION = "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069";

    private static final String LINE_BREAKS = "\n\u000b\f\r\u0085\u2028\u2029";

    private static final int CODE_POINT_DIGITS = 4;

    private VisibleText() {}

    /** One line: every run of white space is one blank. */
    static String line(String text) {
        return shown(text).replaceAll(" {2,}", " ").strip();
    }

    /** Several lines: line feeds stay, a tab is a blank. */
    static String lines(String text) {
        return text.replace("\r\n", "\n").lines().map(VisibleText::indented).collect(Collectors.joining("\n"));
    }

    private static String indented(String line) {
        return shown(line).stripTrailing();
    }

    private static boolean isSpace(int codePoint) {
        return codePoint == ' ' || codePoint == '\t' || LINE_BREAKS.indexOf(codePoint) >= 0;
    }

    private static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(codePoint -> {
            if (isSpace(codePoint)) {
                shown.append(' ');
            } else if (isHidden(codePoint)) {
                shown.append(marked(codePoint));
            } else {
                shown.appendCodePoint(codePoint);
            }
        });
        return shown.toString();
    }

    private static boolean isHidden(int codePoint) {
        return Character.isISOControl(codePoint)
                || Character.getType(codePoint) == Character.SURROGATE
                || DIRECTION.indexOf(codePoint) >= 0
                || isNoCharacter(codePoint);
    }

    /** The last two of every plane, which XML forbids, and the 32 of the basic plane that Unicode keeps free. */
    private static boolean isNoCharacter(int codePoint) {
        return (char) codePoint >= '\ufffe' || (codePoint >= '\ufdd0' && codePoint <= '\ufdef');
    }

    /** The code point as readers of the Unicode charts know it. */
    static String marked(int codePoint) {
        String digits = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
        return "[U+" + "0".repeat(Math.max(0, CODE_POINT_DIGITS - digits.length())) + digits + "]";
    }
}
