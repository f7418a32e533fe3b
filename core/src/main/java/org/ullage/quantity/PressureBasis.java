package org.ullage.quantity;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a pressure is counted from, and how a text says so. A pressure is gauge unless its unit says {@code abs}. */
enum PressureBasis {
    /** Not a gauge or absolute pressure: nothing is said. */
    NONE {
        @Override
        String strip(String written, Function<String, UnreadableQuantityException> refuse) {
            return written;
        }
    },
    /** Counted from the surrounding air. */
    GAUGE {
        @Override
        String strip(String written, Function<String, UnreadableQuantityException> refuse) {
            if (ABSOLUTE_UNIT.matcher(written).matches()) {
                throw refuse.apply("it is absolute where gauge is wanted");
            }
            return plainUnit(GAUGE_UNIT.matcher(written), written);
        }
    },
    /** Counted from vacuum. */
    ABSOLUTE {
        @Override
        String strip(String written, Function<String, UnreadableQuantityException> refuse) {
            Matcher absolute = ABSOLUTE_UNIT.matcher(written);
            if (!absolute.matches()) {
                throw refuse.apply("a pressure without \"abs\" after its unit is gauge, and absolute is wanted");
            }
            return plainUnit(absolute, written);
        }
    };

    private static final Pattern ABSOLUTE_UNIT = Pattern.compile("(?:(.+) abs(?:olute)?|(psi|bar)a)");
    private static final Pattern GAUGE_UNIT = Pattern.compile("(?:(.+) gauge|(psi|bar)g)");

    /** Takes the basis off a written unit, or refuses it. */
    abstract String strip(String written, Function<String, UnreadableQuantityException> refuse);

    static boolean saysAbsolute(String text) {
        return ABSOLUTE_UNIT.matcher(Written.of(text).unit()).matches();
    }

    private static String plainUnit(Matcher marked, String written) {
        if (!marked.matches()) {
            return written;
        }
        return marked.group(1) == null ? marked.group(2) : marked.group(1);
    }
}
