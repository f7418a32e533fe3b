package org.ullage.charge;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/** The parts of a dial that may have errors of their own. */
public enum ScalePart {
    /** Below 25 % of the span. */
    LOWER_QUARTER("lowest quarter"),
    /** From 25 % to 75 % of the span, both ends included. */
    MIDDLE_HALF("middle half"),
    /** Above 75 % of the span. */
    UPPER_QUARTER("highest quarter");

    private static final Source BY_QUARTERS = Source.secondHand(
            "ASME B40.100 (B40.1)", "middle half of the scale and its quarters", "articles on the accuracy grades");

    private static final Constant QUARTER = new Constant("q", 0.25, "1", BY_QUARTERS);

    /** A reading this close, relatively to the span, to a mark stands on it. */
    private static final double ROUNDING = 1e-9;

    private final String words;

    ScalePart(String words) {
        this.words = words;
    }

    /**
     * The part a place on the scale belongs to.
     *
     * @param position share of the span, from 0 to 1
     * @return the part
     */
    public static ScalePart of(double position) {
        if (position < QUARTER.value() - ROUNDING) {
            return LOWER_QUARTER;
        }
        return position > 1 - QUARTER.value() + ROUNDING ? UPPER_QUARTER : MIDDLE_HALF;
    }

    static boolean isOnScale(double position) {
        return position >= -ROUNDING && position <= 1 + ROUNDING;
    }

    /**
     * The part in words.
     *
     * @return such as {@code middle half}
     */
    @Override
    public String toString() {
        return words;
    }
}
