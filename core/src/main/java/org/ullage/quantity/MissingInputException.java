package org.ullage.quantity;

/** An input that a calculation cannot do without and that was not given: it names the input, who needs it and what to do. */
public final class MissingInputException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String input;

    /**
     * Refuses to go on without an input.
     *
     * @param input what is missing, such as {@code static head or cold pressure}
     * @param neededBy who needs it, such as a method's title
     * @param remedy what to do, a sentence without its full stop
     */
    public MissingInputException(String input, String neededBy, String remedy) {
        super(input + " is missing: " + neededBy + " needs it; " + remedy);
        this.input = input;
    }

    /**
     * What is missing.
     *
     * @return the input's name
     */
    public String input() {
        return input;
    }
}
