package org.ullage.support;

/** Rules for the distance of hangers of horizontal pipe; the adopted code decides which holds. */
public enum SpacingRule {
    /** MSS SP-69 / SP-58 guide spans, by size. */
    MSS_GUIDE("MSS SP-69 / SP-58 guide spans"),
    /** International Residential Code 2018, Table P2605.1. */
    IRC_2018("IRC 2018 Table P2605.1"),
    /** International Mechanical Code, Table 305.4. */
    IMC("IMC Table 305.4"),
    /** New Jersey Plumbing Code 2018, chapter 8. */
    NEW_JERSEY_2018("New Jersey Plumbing Code 2018, chapter 8");

    private final String words;

    SpacingRule(String words) {
        this.words = words;
    }

    /**
     * The rule in words.
     *
     * @return such as {@code IMC Table 305.4}
     */
    @Override
    public String toString() {
        return words;
    }
}
