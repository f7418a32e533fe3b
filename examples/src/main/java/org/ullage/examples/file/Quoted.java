package org.ullage.examples.file;

/** A text as a message repeats it: in quotes, and only its beginning if it is long. */
public final class Quoted {

    /** Characters that are repeated; the longest word that is read is shorter. */
    private static final int LONGEST = 60;

    private Quoted() {}

    /**
     * Quotes a text.
     *
     * @param text what was read
     * @return in double quotes
     */
    public static String of(String text) {
        return "\"" + (text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...") + "\"";
    }
}
