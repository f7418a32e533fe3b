package org.ullage.charge;

/** What to do about a charge that was found. */
public enum ChargeAction {
    /** It is too low: add gas. */
    ADD("add"),
    /** It is too high: let gas out. */
    BLEED("bleed"),
    /** It is within the tolerance: leave it. */
    LEAVE("leave");

    private final String word;

    ChargeAction(String word) {
        this.word = word;
    }

    /**
     * The action in a word.
     *
     * @return such as {@code add}
     */
    @Override
    public String toString() {
        return word;
    }
}
