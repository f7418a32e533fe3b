package org.ullage.reference;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** The inputs a question can have. The names are those of the sizing program's CSV files where both have the same thing. */
public enum Input {
    /** Short name of the sizing method, such as {@code ashrae}; the method's own conventions fill in what is not given. */
    METHOD,
    /** {@code diaphragm}, {@code bladder}, {@code plain-steel} or {@code open}. */
    VESSEL,
    /** Such as {@code water}; a model may follow: {@code water/if97}, {@code water/kell}, {@code water/table}. */
    FLUID,
    /** {@code steel}, {@code copper} or {@code none}; not given means not stated. */
    PIPE,
    /** Volume of the loop without the vessel, cold. */
    CONTENTS,
    /** Mass of the fluid, in place of the contents. */
    MASS,
    /** Lowest (or fill) temperature. */
    COLD,
    /** Highest temperature, in the sense of the method. */
    HOT,
    /** Specific volume that the source gives for the cold state, in place of a fluid model. */
    COLD_SPECIFIC_VOLUME,
    /** Specific volume that the source gives for the hot state. */
    HOT_SPECIFIC_VOLUME,
    /** Temperature of a single state. */
    TEMPERATURE,
    /** Absolute pressure of a single state or of both ends of an expansion; {@code saturation} means where the fluid boils. */
    PRESSURE,
    /** Pressure at the vessel, cold; gauge unless the unit says {@code abs}. */
    COLD_PRESSURE,
    /** Pressure at the vessel, hot; gauge unless the unit says {@code abs}. */
    FINAL_PRESSURE,
    /** Gas charge with the water side empty; gauge unless the unit says {@code abs}. */
    PRECHARGE,
    /** Height of the loop above the vessel. */
    STATIC_HEAD,
    /** Pressure to keep at the top of the loop, cold. */
    TOP_MARGIN,
    /** Gauge setting of the relief valve. */
    RELIEF_SETTING,
    /** Absolute pressure of the air. */
    ATMOSPHERE,
    /** Water that the vessel takes in. */
    WATER,
    /** Nominal volume of a given vessel. */
    NOMINAL_VOLUME,
    /** Contents of solar collectors that may boil empty. */
    COLLECTORS,
    /** Contents of the pipes at and above them. */
    COLLECTOR_PIPE,
    /** Pipe standard, such as {@code ASME B36.10 Sch 40}. */
    STANDARD,
    /** Pipe size, as the standard writes it. */
    SIZE,
    /** Length of pipe. */
    LENGTH;

    /**
     * The name in the case files.
     *
     * @return such as {@code cold_pressure}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Input ofWord(String word) {
        return Arrays.stream(values())
                .filter(input -> input.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("input \"" + word + "\" must be one of "
                        + Arrays.stream(values()).map(Input::word).collect(Collectors.joining(", "))));
    }
}
