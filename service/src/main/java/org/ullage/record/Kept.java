package org.ullage.record;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;

/** How the records take in what they are given: checked, copied, and fit to be written to any file. */
final class Kept {

    /** What stands for half of a surrogate pair. */
    private static final char REPLACEMENT = '\uFFFD';

    private Kept() {}

    /** A text that may be missing; blank counts as missing. */
    static @Nullable String text(@Nullable String text) {
        return text == null || text.isBlank() ? null : wellFormed(text);
    }

    /** A text that must be there. */
    static String required(String name, @Nullable String text, String neededBy) {
        return present(name, text(text), neededBy);
    }

    /** A value that must be there. A file may leave out what a caller cannot. */
    static <T> T present(String name, @Nullable T value, String neededBy) {
        if (value == null) {
            throw new MissingInputException(name, neededBy, "write it down");
        }
        return value;
    }

    static void aboveZero(String name, @Nullable Quantity<?, ?> quantity) {
        if (quantity != null && quantity.si() <= 0) {
            throw new OutOfRangeException(
                    name, quantity.textInBothSystems(), "above zero", "check the number and its sign");
        }
    }

    static void notNegative(String name, @Nullable Quantity<?, ?> quantity) {
        if (quantity != null && quantity.si() < 0) {
            throw new OutOfRangeException(
                    name, quantity.textInBothSystems(), "zero or more", "check the number and its sign");
        }
    }

    /** A list that may be missing. */
    static <T> List<T> list(String name, @Nullable List<T> list) {
        if (list == null) {
            return List.of();
        }
        for (int place = 0; place < list.size(); place++) {
            if (list.get(place) == null) {
                throw new OutOfRangeException(
                        name + "[" + place + "]", "null", "an entry of its own", "fill it in or take it out");
            }
        }
        return List.copyOf(list);
    }

    /** What a file holds beyond this release: sorted by name, so that it is written the same way each time. */
    static Map<String, @Nullable Object> fields(@Nullable Map<String, @Nullable Object> fields) {
        Map<String, @Nullable Object> sorted = new TreeMap<>();
        if (fields != null) {
            fields.forEach((name, value) -> sorted.put(wellFormed(name), value(value)));
        }
        return Collections.unmodifiableMap(sorted);
    }

    private static @Nullable Object value(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            map.forEach((name, part) -> copy.put(wellFormed(String.valueOf(name)), value(part)));
            return Collections.unmodifiableMap(copy);
        }
        if (value instanceof List<?> list) {
            List<@Nullable Object> copy = new ArrayList<>();
            list.forEach(part -> copy.add(value(part)));
            return Collections.unmodifiableList(copy);
        }
        if (value == null || value instanceof Number || value instanceof Boolean) {
            return value;
        }
        if (value instanceof String text) {
            return wellFormed(text);
        }
        throw new OutOfRangeException(
                "unknown field",
                value.getClass().getName(),
                "text, number, truth value, list, map or null",
                "take it out");
    }

    private static String wellFormed(String text) {
        if (StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            return text;
        }
        StringBuilder whole = new StringBuilder(text.length());
        text.codePoints().map(Kept::whole).forEach(whole::appendCodePoint);
        return whole.toString();
    }

    private static int whole(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE ? REPLACEMENT : codePoint;
    }
}
