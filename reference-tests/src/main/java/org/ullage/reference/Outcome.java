package org.ullage.reference;

/** How an implementation did in one case. */
public enum Outcome {
    /** It did what the case demands. */
    PASSED("passed"),
    /** It did something else. */
    FAILED("FAILED"),
    /** It left the question. */
    NOT_ANSWERED("not answered");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /**
     * In words.
     *
     * @return such as {@code passed}
     */
    @Override
    public String toString() {
        return words;
    }
}
