package org.ullage.loop;

/** A caller's text as a message repeats it. */
final class Quoted {

    /** Characters that are repeated. */
    private static final int LONGEST_ECHO = 60;

    private Quoted() {}

    static String of(String text) {
        String shown = text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "...";
        return "\"" + shown + "\"";
    }
}
