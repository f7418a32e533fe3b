package org.ullage.report;

import java.text.Normalizer;
import java.util.Map;

/** Text in ASCII: accents are dropped, usual signs are spelt, anything else is shown by its code point. */
final class AsciiText {

    private static final Map<Integer, String> SPELT = Map.ofEntries(
            Map.entry((int) '\u00b0', "deg "),
            Map.entry((int) '\u00b1', "+/-"),
            Map.entry((int) '\u00d7', "x"),
            Map.entry((int) '\u2212', "-"),
            Map.entry((int) '\u2010', "-"),
            Map.entry((int) '\u2013', "-"),
            Map.entry((int) '\u2014', "-"),
            Map.entry((int) '\u2018', "'"),
            Map.entry((int) '\u2019', "'"),
            Map.entry((int) '\u201c', "\""),
            Map.entry((int) '\u201d', "\""),
            Map.entry((int) '\u2264', "<="),
            Map.entry((int) '\u2265', ">="),
            Map.entry((int) '\u03bc', "u"),
            Map.entry((int) '\u03a9', "Ohm"),
            Map.entry((int) '\u00df', "ss"),
            Map.entry((int) '\u00e6', "ae"),
            Map.entry((int) '\u00c6', "AE"),
            Map.entry((int) '\u0153', "oe"),
            Map.entry((int) '\u0152', "OE"),
            Map.entry((int) '\u00f8', "o"),
            Map.entry((int) '\u00d8', "O"),
            Map.entry((int) '\u0142', "l"),
            Map.entry((int) '\u0141', "L"),
            Map.entry((int) '\u0111', "d"),
            Map.entry((int) '\u0110', "D"),
            Map.entry((int) '\u0131', "i"));

    private AsciiText() {}

    /** One line. */
    static String line(String text) {
        return spelt(VisibleText.line(text));
    }

    /** Several lines. */
    static String lines(String text) {
        return spelt(VisibleText.lines(text));
    }

    private static String spelt(String visible) {
        StringBuilder ascii = new StringBuilder(visible.length());
        // Compatibility decomposition turns a no-break space into a blank, a raised 3 into 3, and parts letters from
        // accents.
        Normalizer.normalize(visible, Normalizer.Form.NFKD).codePoints().forEach(codePoint -> {
            if (codePoint == '\n' || (codePoint >= ' ' && codePoint <= '~')) {
                ascii.appendCodePoint(codePoint);
            } else if (Character.getType(codePoint) != Character.NON_SPACING_MARK) {
                ascii.append(SPELT.getOrDefault(codePoint, VisibleText.marked(codePoint)));
            }
        });
        return ascii.toString();
    }
}
