package org.ullage.fluids;

import org.ullage.provenance.Source;

/**
 * What a percent by volume means when it is set against a percent by mass. The three differ by up to about 1.3 points at 50 to
 * 60 %: 50 mass% of ethylene glycol is 47.6, 47.3 or 47.8 vol%, of propylene glycol 49.9, 49.1 or 50.1 vol%.
 */
public enum ConcentrationDefinition {
    /**
     * The two columns ASHRAE prints side by side for inhibited fluids; straight lines between the rows. From 0 to 60 mass%,
     * which is 57.8 vol% of ethylene and 60 vol% of propylene glycol. The definition used where nothing else is said.
     */
    ASHRAE_PAIRING("ASHRAE's pairing", GlycolSources.ASHRAE_PAIRING),

    /** Glycol volume over the sum of both volumes before mixing, at 20 degC. From 0 to 100 %. */
    IDEAL_20C("ideal volumes at 20 degC", GlycolSources.IDEAL_DEFINITION),

    /**
     * Glycol volume before mixing over the volume of the solution, which has contracted, at 20 degC; solution by Melinder
     * 2010, so from 0 to 60 mass%.
     */
    ON_SOLUTION_20C("volume of the solution at 20 degC", GlycolSources.ON_SOLUTION_DEFINITION);

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is a record of strings and so immutable
    private final Source source;

    ConcentrationDefinition(String words, Source source) {
        this.words = words;
        this.source = source;
    }

    /**
     * The definition in a few words.
     *
     * @return such as {@code ASHRAE's pairing}
     */
    public String words() {
        return words;
    }

    /**
     * Where the conversion comes from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }
}
