package org.ullage.loop;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The spellings of a nominal pipe size, brought to keys that compare as text: {@code in:0.75} for 3/4, {@code dn:25} for DN 25,
 * {@code mm:32} for d32, {@code 22x1} for 22 x 1, and {@code n:2} for a bare 2, which may be inches, DN or millimetres.
 */
final class SizeName {

    private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)";

    private static final String INCH_MARK = "(?:\"|''| ?in\\.?| ?inch| ?inches)?";

    private static final Pattern FRACTION = Pattern.compile(
            "(?:nps ?)?(?:(?<whole>[0-9]+)[- ])?(?<top>[0-9]+)/(?<bottom>[0-9]*[1-9][0-9]*)" + INCH_MARK);

    private static final Pattern PAIR = Pattern.compile("(?:d ?)?" + NUMBER + "(?: ?mm)? ?x ?" + NUMBER + "(?: ?mm)?");

    /** Longer than any size is written; keeps a text of any length from costing time. */
    private static final int LONGEST = "nps 1234-1234/1234 inches".length();

    private SizeName() {}

    /** The key of a size as a caller writes it; the text in lower case, or nothing of a long one, if it is no spelling. */
    static String key(String text) {
        String plain = plain(text);
        if (plain.length() > LONGEST) {
            return "";
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches()) {
            return "in:" + sum(fraction);
        }
        Matcher pair = PAIR.matcher(plain);
        if (pair.matches()) {
            return number(pair.group(1)) + "x" + number(pair.group(2));
        }
        for (Spelling spelling : Spelling.values()) {
            Matcher matcher = spelling.pattern.matcher(plain);
            if (matcher.matches()) {
                return spelling.prefix + number(matcher.group(1));
            }
        }
        return plain;
    }

    /** The keys under which a table row is found: a size in inches also as a bare number. */
    static List<String> keysOfRow(String text) {
        String key = key(text);
        return key.startsWith("in:") ? List.of(key, key.replace("in:", "n:")) : List.of(key);
    }

    /** The text in one spelling of blanks, fractions and signs, in lower case. */
    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replace("\u00bc", " 1/4")
                .replace("\u00bd", " 1/2")
                .replace("\u00be", " 3/4")
                .replace('\u00d7', 'x')
                .replace('\u00f8', 'd')
                .replace('\u2044', '/')
                .replace('\u2033', '"')
                .replace('\u201d', '"')
                .replaceAll("[\\s\\p{Zs}]++", " ")
                .strip();
    }

    private static String sum(Matcher mixed) {
        BigDecimal whole = mixed.group("whole") == null ? BigDecimal.ZERO : new BigDecimal(mixed.group("whole"));
        BigDecimal part =
                new BigDecimal(mixed.group("top")).divide(new BigDecimal(mixed.group("bottom")), MathContext.DECIMAL32);
        return plainText(whole.add(part));
    }

    private static String number(String text) {
        return plainText(new BigDecimal(text));
    }

    private static String plainText(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** The spellings with one number, in the order in which they are tried. */
    private enum Spelling {
        INCHES("in:", "(?=nps|.*(?:\"|''|in))(?:nps ?)?" + NUMBER + INCH_MARK),
        NOMINAL_DIAMETER("dn:", "dn ?" + NUMBER),
        OUTSIDE("mm:", "(?=d|.*mm)(?:d ?)?" + NUMBER + "(?: ?mm)?"),
        PLAIN("n:", NUMBER);

        private final String prefix;
        private final Pattern pattern;

        Spelling(String prefix, String pattern) {
            this.prefix = prefix;
            this.pattern = Pattern.compile(pattern);
        }
    }
}
