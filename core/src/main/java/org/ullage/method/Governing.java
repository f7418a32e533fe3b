package org.ullage.method;

/** What decided the required volume. */
public enum Governing {
    /** The gas cushion: a smaller vessel would pass the final pressure. */
    GAS_LAW("the gas law"),
    /** The least volume that the rule allows for the water taken in: by the pressures alone a smaller vessel would do. */
    LEAST_VOLUME("the least volume the rule allows"),
    /** The vessel's acceptance limit: a smaller vessel could not hold the water, whatever the pressure. */
    ACCEPTANCE_LIMIT("the acceptance limit of the vessel"),
    /** The allowance for an open tank. */
    OPEN_ALLOWANCE("the allowance for open tanks");

    private final String words;

    Governing(String words) {
        this.words = words;
    }

    /**
     * In words.
     *
     * @return such as {@code the gas law}
     */
    @Override
    public String toString() {
        return words;
    }
}
