package org.ullage.quantity;

/** A text that is not a number with a known unit: it names the text, the quantity wanted and the units that are read. */
public final class UnreadableQuantityException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String text;
    private final String quantity;

    UnreadableQuantityException(String text, String quantity, String reason, String acceptedUnits) {
        super("\"" + text + "\" is not a " + quantity + ": " + reason + "; write a number and one of the units "
                + acceptedUnits);
        this.text = text;
        this.quantity = quantity;
    }

    /**
     * The text that was not understood.
     *
     * @return as it was given
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
