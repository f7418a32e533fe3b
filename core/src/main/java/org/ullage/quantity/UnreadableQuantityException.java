package org.ullage.quantity;

/** A text that is not a number with a known unit: it names the text, the quantity wanted and the units that are read. */
public final class UnreadableQuantityException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Characters of the text that the message repeats. */
    private static final int LONGEST_ECHO = 60;

    private final String text;
    private final String quantity;

    UnreadableQuantityException(String text, String quantity, String reason, String acceptedUnits) {
        super("\"" + shortened(text) + "\" cannot be read as " + quantity + ": " + reason
                + "; write a number and one of the units " + acceptedUnits);
        this.text = text;
        this.quantity = quantity;
    }

    static String shortened(String text) {
        return text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "...";
    }

    /**
     * The text that was not understood.
     *
     * @return as it was given, in full
     */
    public String text() {
        return text;
    }

    /**
     * What it should have been.
     *
     * @return the quantity's name
     */
    public String quantity() {
        return quantity;
    }
}
