package org.ullage.loop;

import java.util.Locale;
import java.util.regex.Pattern;

/** The spellings of a pipe standard's name, brought to one text that compares. */
final class StandardName {

    /** A standard's number, beside which the material is only an explanation. */
    private static final Pattern NUMBERED = Pattern.compile("\\b([a-z]\\d|\\d{4})");

    private static final Pattern MATERIAL = Pattern.compile("\\b(copper|steel|cpvc|pex|pe-x|pe-rt|cts)\\b");

    /** Issuers, and words that tell one standard from no other. */
    private static final Pattern IDLE = Pattern.compile("\\b(ansi|asme|astm|bs|type|pipe|tube|tubing|series)\\b");

    private static final Pattern NOT_TELLING = Pattern.compile("[^a-z0-9.]");

    private StandardName() {}

    static String squeezed(String name) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replace("schedule", "sch")
                .replace("b36.10m", "b36.10")
                .replace("15875-2", "15875")
                .replace("22391-2", "22391")
                .replace("din en", "en");
        String telling =
                NUMBERED.matcher(plain).find() ? MATERIAL.matcher(plain).replaceAll("") : plain;
        return NOT_TELLING.matcher(IDLE.matcher(telling).replaceAll("")).replaceAll("");
    }
}
