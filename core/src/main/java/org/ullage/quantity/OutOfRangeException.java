package org.ullage.quantity;

/**
 * A value that cannot be worked with: it names the quantity, the value with its unit, the allowed range and what to do. Bad
 * input, never a failure of the calculation.
 */
public final class OutOfRangeException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String quantity;
    private final String value;
    private final String allowed;
    private final String remedy;

    /**
     * Refuses a value.
     *
     * @param quantity what it is, such as {@code final pressure}
     * @param value the value with its unit, and any second value it was held against
     * @param allowed the allowed range in words, such as {@code above 0 K}
     * @param remedy what to do, a sentence without its full stop
     */
    public OutOfRangeException(String quantity, String value, String allowed, String remedy) {
        super(quantity + " " + value + " is not allowed: it must be " + allowed + "; " + remedy);
        this.quantity = quantity;
        this.value = value;
        this.allowed = allowed;
        this.remedy = remedy;
    }

    /**
     * What was refused.
     *
     * @return the quantity's name
     */
    public String quantity() {
        return quantity;
    }

    /**
     * The refused value.
     *
     * @return with its unit
     */
    public String value() {
        return value;
    }

    /**
     * What would be accepted.
     *
     * @return the range in words
     */
    public String allowed() {
        return allowed;
    }

    /**
     * What to do.
     *
     * @return the remedy in words
     */
    public String remedy() {
        return remedy;
    }
}
