package org.ullage.report;

import java.util.ArrayList;
import java.util.List;

/**
 * The letters on a chart and the room they take. A chart does not know the reader's type, so widths are estimated on the wide side: a
 * label may have air around it, but is never cut off.
 */
final class Letters {

    static final String FAMILY = "system-ui, sans-serif";

    private static final double SIZE_IN_PIXELS = 13;
    private static final double LINE_IN_PIXELS = 17;

    /** Half the height of a capital, as a share of the size. */
    private static final double HALF_A_CAPITAL = 0.36;

    /** Widths as shares of the size, from wide sans-serif type. */
    private static final double NARROW = 0.41;

    private static final double USUAL = 0.64;
    private static final double CAPITAL = 0.79;
    private static final double WIDE = 1.05;

    /** How much wider bold letters are. */
    private static final double BOLDER = 1.13;

    private static final String NARROW_ONES = " \u00a0!'()*,-./:;I[\\]`fijlrt|\"";
    private static final String WIDE_ONES = "%@MW+mw<>=~#&";

    private Letters() {}

    static double size() {
        return SIZE_IN_PIXELS;
    }

    /** From one line of text to the next. */
    static double line() {
        return LINE_IN_PIXELS;
    }

    /** How far a base line is below the middle of the letters. */
    static double middleToBase() {
        return SIZE_IN_PIXELS * HALF_A_CAPITAL;
    }

    /** The usual distance between two things. */
    static double gap() {
        return SIZE_IN_PIXELS * 0.5;
    }

    /** Estimated width in pixels. */
    static double width(String text) {
        return SIZE_IN_PIXELS * text.codePoints().mapToDouble(Letters::share).sum();
    }

    /** The same for bold letters. */
    static double boldWidth(String text) {
        return BOLDER * width(text);
    }

    private static double share(int codePoint) {
        if (NARROW_ONES.indexOf(codePoint) >= 0) {
            return NARROW;
        }
        if (codePoint > '~' || WIDE_ONES.indexOf(codePoint) >= 0) {
            return WIDE;
        }
        return codePoint >= 'A' && codePoint <= 'Z' ? CAPITAL : USUAL;
    }

    /** The widest of several. */
    static double widest(List<String> lines) {
        return lines.stream().mapToDouble(Letters::width).max().orElse(0);
    }

    /** The same as {@link #wrapped} for bold letters. */
    static List<String> wrappedBold(String text, double room) {
        return wrapped(text, room / BOLDER);
    }

    /** Text as lines no wider than a room, broken at blanks and, where one word is too wide, inside it. */
    static List<String> wrapped(String text, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : VisibleText.line(text).split(" ", -1)) {
            if (line.length() > 0 && width(line + " " + word) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "");
            word.codePoints().forEach(codePoint -> {
                if (line.length() > 0 && width(line + Character.toString(codePoint)) > room) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.appendCodePoint(codePoint);
            });
        }
        lines.add(line.toString());
        return lines;
    }
}
