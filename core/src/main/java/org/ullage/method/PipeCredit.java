package org.ullage.method;

import org.ullage.provenance.Source;

/** How a method counts that the pipes grow with the fluid and make room for some of the expansion. */
@SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
public enum PipeCredit {
    /** The pipe's growth is subtracted: 3 alpha (t_2 - t_1) of the contents. */
    SUBTRACTED(
            "3 x linear expansion x temperature rise, of the contents",
            Source.secondHand(
                    "ASHRAE Handbook, HVAC Systems and Equipment",
                    "2000, ch. 12 eq. 14, pipe term",
                    "a project calculation sheet")),
    /** The expansion rule is net of steel pipe already; nothing is subtracted again. */
    INCLUDED(
            "already in the expansion rule (steel)",
            Source.computed(
                    "IAPWS-IF97 and 3 x 6.5e-6 per degF", "comparison of the rule with net expansion in steel")),
    /** The pipe's growth stands in the expansion rule itself, which balances masses. */
    BALANCED("in the mass balance", Source.computed("mass balance", "the pipe's volume follows its temperature")),
    /** The method counts the fluid's expansion alone, which is the safe side. */
    NONE("none", Source.commonPractice("no credit for the growth of the pipe"));

    /** A solid that expands freely grows in volume by three times its linear coefficient (three dimensions). */
    private static final int DIMENSIONS = 3;

    private final String words;
    private final Source source;

    PipeCredit(String words, Source source) {
        this.words = words;
        this.source = source;
    }

    /**
     * Where the convention comes from.
     *
     * @return its source
     */
    public Source source() {
        return source;
    }

    /**
     * The credit as a share of the contents, on bare SI numbers.
     *
     * @param alpha linear expansion coefficient of the pipe in 1/K; 0 if unknown
     * @param rise temperature rise in K
     * @return the share, zero or more
     */
    double fraction(double alpha, double rise) {
        return this == SUBTRACTED ? growth(alpha, rise) : 0;
    }

    /**
     * Growth of the pipe's volume as a share of it, on bare SI numbers.
     *
     * @param alpha linear expansion coefficient of the pipe in 1/K
     * @param rise temperature rise in K
     * @return the share
     */
    public static double growth(double alpha, double rise) {
        return DIMENSIONS * alpha * rise;
    }

    /**
     * The convention in words.
     *
     * @return such as {@code none}
     */
    @Override
    public String toString() {
        return words;
    }
}
