package org.ullage.support;

import org.ullage.provenance.Source;

/** How the hands hold the load, with the coupling multiplier CM of the lifting equation. */
public enum Grip {
    /** Handles or cut-outs of the best kind. */
    GOOD(1.00, 1.00, Grip.table()),
    /** Fingers bent at right angles under a box, or handles of less than the best kind. */
    FAIR(0.95, 1.00, Grip.table()),
    /** Neither; a smooth wet cylinder. */
    POOR(0.90, 0.90, Grip.table());

    private final double low;
    private final double high;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
    private final Source source;

    Grip(double low, double high, Source source) {
        this.low = low;
        this.high = high;
        this.source = source;
    }

    private static Source table() {
        return Source.fromMemory(Niosh.TITLE, "Table 7, coupling multiplier");
    }

    /**
     * The coupling multiplier.
     *
     * @param handsHigh whether the hands are 75 cm (30 in) or more above the floor
     * @return CM
     */
    public double multiplier(boolean handsHigh) {
        return handsHigh ? high : low;
    }

    /**
     * Where the multiplier comes from.
     *
     * @return its source
     */
    public Source source() {
        return source;
    }
}
