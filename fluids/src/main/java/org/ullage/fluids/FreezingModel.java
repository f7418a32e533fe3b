package org.ullage.fluids;

import org.ullage.provenance.Source;

/**
 * The two published sets of freezing points, and the safe side of both. At the same percent by mass ethylene glycol freezes warmer by ASHRAE (0.5 K at
 * 30 %, 2.9 K at 60 %), propylene glycol warmer by Melinder (0.5 K at 40 %, 1.4 K at 55 %).
 */
public enum FreezingModel {
    /** ASHRAE's table for inhibited fluids, straight lines between its rows; 0 to 60 mass%. */
    ASHRAE("ASHRAE", GlycolSources.ASHRAE_FREEZING),

    /** Melinder's polynomial for pure glycol in water; 0 to 60 mass%. */
    MELINDER("Melinder 2010", GlycolSources.MELINDER),

    /** The warmer of the two at each concentration: the safe side; 0 to 60 mass%. */
    WARMER("the warmer of ASHRAE and Melinder 2010", GlycolSources.WARMER_FREEZING);

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is a record of strings and so immutable
    private final Source source;

    FreezingModel(String words, Source source) {
        this.words = words;
        this.source = source;
    }

    /**
     * The model's short name.
     *
     * @return such as {@code Melinder 2010}
     */
    public String words() {
        return words;
    }

    /**
     * Where the freezing points come from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }
}
