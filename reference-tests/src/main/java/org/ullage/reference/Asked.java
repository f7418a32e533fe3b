package org.ullage.reference;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What a question asks for, and so what kind of answer it takes. */
public enum Asked {
    /** Smallest nominal volume of the vessel. */
    REQUIRED_VOLUME("required volume", Measure.VOLUME),
    /** What a length of pipe holds. */
    PIPE_CONTENTS("pipe contents", Measure.VOLUME),
    /** What the loop's fluid gains between cold and hot, less the pipe credit if the method takes one. */
    NET_EXPANSION("net expansion", Measure.VOLUME),
    /** What the vessel must take in all: net expansion and reserve. */
    ACCEPTANCE_VOLUME("acceptance volume", Measure.VOLUME),
    /** The volume that the contents have when hot. */
    HOT_VOLUME("hot volume", Measure.VOLUME),
    /** Expansion as a share of the cold contents; negative if the fluid shrinks. */
    EXPANSION_FRACTION("expansion fraction", Measure.RATIO),
    /** Share of a vessel that is water at the final pressure: 1 - p_0 / p_f. */
    ACCEPTANCE_FACTOR("acceptance factor", Measure.RATIO),
    /** Vessel volume for each volume of water taken in. */
    PRESSURE_FACTOR("pressure factor", Measure.RATIO),
    /** Specific volume of the liquid. */
    SPECIFIC_VOLUME("specific volume", Measure.SPECIFIC_VOLUME),
    /** Density of the liquid. */
    DENSITY("density", Measure.DENSITY),
    /** Specific enthalpy of the liquid. */
    SPECIFIC_ENTHALPY("specific enthalpy", Measure.SPECIFIC_ENTHALPY),
    /** Specific heat capacity of the liquid at constant pressure. */
    HEAT_CAPACITY("heat capacity", Measure.HEAT_CAPACITY),
    /** Pressure at which the liquid boils. */
    SATURATION_PRESSURE("saturation pressure", Measure.ABSOLUTE_PRESSURE),
    /** Temperature at which the liquid boils. */
    SATURATION_TEMPERATURE("saturation temperature", Measure.TEMPERATURE),
    /** Pressure at the vessel, cold. */
    COLD_PRESSURE("cold pressure", Measure.GAUGE_PRESSURE),
    /** Pressure at the vessel, hot. */
    FINAL_PRESSURE("final pressure", Measure.GAUGE_PRESSURE);

    private final String words;
    private final Measure measure;

    Asked(String words, Measure measure) {
        this.words = words;
        this.measure = measure;
    }

    /**
     * The words used in the case files.
     *
     * @return such as {@code required volume}
     */
    public String words() {
        return words;
    }

    Measure measure() {
        return measure;
    }

    static Asked ofWords(String words) {
        return Arrays.stream(values())
                .filter(asked -> asked.words.equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("question \"" + words + "\" must be one of "
                        + Arrays.stream(values()).map(Asked::words).collect(Collectors.joining(", "))));
    }
}
