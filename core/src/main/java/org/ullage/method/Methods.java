package org.ullage.method;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ullage.quantity.OutOfRangeException;

/** The published methods that ship with the library, each a set of conventions with its sources. */
public final class Methods {

    /** ASHRAE Handbook: real densities, pipe term, no reserve; diaphragm, bladder, closed plain steel and open tanks. */
    public static final Method ASHRAE = AshraeMethod.METHOD;

    /** ASME BPVC Section IV and the mechanical codes after it: a straight line for hot water in steel. */
    public static final Method ASME_IV = AsmeMethod.METHOD;

    /** EN 12828 (2012+A1:2014), Annex D: expansion table, water reserve, margins on both pressures. */
    public static final Method EN_12828 = En12828Method.METHOD;

    /** INAIL Raccolta R (2009): expansion line at the safety temperature, relief setting without margin. */
    public static final Method RACCOLTA_R = RaccoltaRMethod.METHOD;

    /** Mass balance: this library's own model, the yardstick for the rest. */
    public static final Method MASS_BALANCE = MassBalanceMethod.METHOD;

    private static final List<Method> ALL = List.of(ASHRAE, ASME_IV, EN_12828, RACCOLTA_R, MASS_BALANCE);

    private Methods() {}

    /**
     * Every method.
     *
     * @return in the order of this page
     */
    public static List<Method> all() {
        return ALL;
    }

    /**
     * Finds a method by its short name.
     *
     * @param name such as {@code en-12828}; case does not matter
     * @return the method
     * @throws OutOfRangeException if no method has that name
     */
    public static Method named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(method -> method.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "method",
                        "\"" + name.strip() + "\"",
                        "one of " + ALL.stream().map(Method::name).collect(Collectors.joining(", ")),
                        "write the standard's name in lower case"));
    }
}
