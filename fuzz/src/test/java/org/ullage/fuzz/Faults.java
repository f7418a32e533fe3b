package org.ullage.fuzz;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The faults of a run, one for each place they come from: a thousand cases of one fault say no more than the first. */
final class Faults {

    private static final int LONGEST = 2_000;

    private final Map<String, String> byPlace = new LinkedHashMap<>();

    synchronized void add(String name, Fault fault) {
        byPlace.computeIfAbsent(place(fault), place -> ascii(name + "\n    " + fault.getMessage() + "\n    " + place));
    }

    synchronized List<String> texts() {
        return List.copyOf(byPlace.values());
    }

    /** A console need not know the characters of a hostile text. */
    private static String ascii(String text) {
        StringBuilder plain = new StringBuilder();
        text.chars().limit(LONGEST).forEach(one -> {
            if (one == '\n' || (one >= ' ' && one < 0x7f)) {
                plain.append((char) one);
            } else {
                plain.append(String.format(Locale.ROOT, "\\u%04x", one));
            }
        });
        return plain.toString();
    }

    /** The uppermost lines of the trace that are the library's. */
    private static String place(Fault fault) {
        Throwable cause = fault.getCause() == null ? fault : fault.getCause();
        StringBuilder place = new StringBuilder(cause.getClass().getSimpleName());
        int lines = 0;
        for (StackTraceElement line : cause.getStackTrace()) {
            if (line.getClassName().startsWith("org.ullage.") && lines < 4) {
                place.append("\n        at ").append(line);
                lines++;
            }
        }
        return place.toString();
    }
}
