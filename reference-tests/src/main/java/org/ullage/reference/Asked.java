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
    FINAL_PRESSURE("final pressure", Measure.GAUGE_PRESSURE),
    /** What a gauge shows of a charge, the gas being at another temperature than when it was set. */
    CHARGE_READING("charge reading", Measure.GAUGE_PRESSURE),
    /** How far a dial gauge may be off, either way. */
    GAUGE_ERROR("gauge error", Measure.PRESSURE_DIFFERENCE),
    /** The same as a share of what it shows. */
    GAUGE_ERROR_SHARE("gauge error share", Measure.RATIO),
    /** Mass of the bare shell, by the rough estimate that the case file describes. */
    EMPTY_MASS("empty mass", Measure.MASS),
    /** Mass of the water that fills a vessel, 998.2 kg/m3. */
    WATER_MASS("mass of water", Measure.MASS),
    /** Mass of such a shell full of water. */
    WATERLOGGED_MASS("waterlogged mass", Measure.MASS),
    /** Twice that, which a code asks supports to carry. */
    SUPPORTED_MASS("supported mass", Measure.MASS),
    /** Area at the root of the thread of a rod. */
    ROD_ROOT_AREA("rod root area", Measure.AREA),
    /** Safe load of a rod. */
    ROD_LOAD("rod load", Measure.FORCE),
    /** Load that a beam may carry. */
    BEAM_LOAD("beam load", Measure.FORCE),
    /** Load of equal bending stress, relative to a simple span evenly loaded. */
    LOAD_FACTOR("load factor", Measure.RATIO),
    /** Deflection at equal bending stress, relative to a simple span evenly loaded. */
    DEFLECTION_FACTOR("deflection factor", Measure.RATIO),
    /** Horizontal seismic force as a part of the weight, ASCE 7-05 to 7-16. */
    SEISMIC_COEFFICIENT("seismic coefficient", Measure.RATIO),
    /** Recommended weight limit where a lift begins, by the NIOSH equation. */
    LIFTING_LIMIT("lifting limit", Measure.MASS),
    /** The same as a share of its load constant. */
    LIFTING_MULTIPLIER("lifting multiplier", Measure.RATIO),
    /** Mass up to which a lift seldom needs a detailed assessment. */
    LIFTING_FILTER("lifting filter", Measure.MASS),
    /** Greatest distance of hangers of horizontal pipe. */
    HANGER_SPACING("hanger spacing", Measure.LENGTH),
    /** Thermal expansion of the liquid at constant pressure. */
    EXPANSIVITY("expansivity", Measure.PER_KELVIN),
    /** Isothermal compressibility of the liquid. */
    COMPRESSIBILITY("compressibility", Measure.PER_PASCAL),
    /** Rise of pressure with temperature of a liquid locked in. */
    LOCKED_SLOPE("locked slope", Measure.PRESSURE_SLOPE);

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
