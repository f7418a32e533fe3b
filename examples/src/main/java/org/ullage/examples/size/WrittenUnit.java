package org.ullage.examples.size;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Unit;

/** Finds the unit in which a readable quantity is written, so that the answer can be given in it. */
public final class WrittenUnit {

    private static final Pattern WHITE_SPACE = Pattern.compile("[\\s\\p{Zs}]+");
    private static final Pattern NUMBER = Pattern.compile("^[+-]?[0-9.]+(?:[eE][+-]?[0-9]+)? ?");

    private WrittenUnit() {}

    /**
     * The unit: the one with the longest name that follows the number, because what may stand behind it is only {@code abs} or
     * {@code gauge}.
     *
     * @param text the quantity as written
     * @param offered the units it may be in
     * @param <D> their dimension
     * @return null if it is none of those offered
     */
    public static <D> @Nullable Unit<D> of(String text, List<Unit<D>> offered) {
        String plain = WHITE_SPACE.matcher(text.strip()).replaceAll(" ");
        String written = NUMBER.matcher(plain).replaceFirst("");
        Unit<D> best = null;
        int longest = 0;
        for (Unit<D> unit : offered) {
            int length = lengthAtStart(unit, written);
            if (length > longest) {
                longest = length;
                best = unit;
            }
        }
        return best;
    }

    private static int lengthAtStart(Unit<?> unit, String written) {
        return Stream.concat(Stream.of(unit.symbol()), unit.otherNames().stream())
                .filter(written::startsWith)
                .map(String::length)
                .max(Comparator.naturalOrder())
                .orElse(0);
    }
}
