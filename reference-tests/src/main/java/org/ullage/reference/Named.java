package org.ullage.reference;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Finds what a question calls by name. */
final class Named {

    private Named() {}

    /** The one of that name; a name that the library does not know is a gap, not a refusal. */
    static <T> T of(List<T> all, Function<T, String> nameOf, String name) {
        return all.stream()
                .filter(each -> nameOf.apply(each).equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing is called " + name));
    }

    /** The constant that prints so. */
    static <T extends Enum<T>> T of(Class<T> type, String name) {
        return of(List.of(type.getEnumConstants()), Object::toString, name);
    }

    /** The constant whose own name reads so, in lower case with spaces. */
    static <T extends Enum<T>> T byConstant(Class<T> type, String name) {
        return of(
                List.of(type.getEnumConstants()),
                constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                name);
    }
}
