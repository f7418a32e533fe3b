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
    LENGTH,
    /** Gas temperature at which a charge was set. */
    CHARGED_AT,
    /** Gas temperature at which it is read. */
    GAS_TEMPERATURE,
    /** Volume of all the gas at the cold state. */
    GAS_VOLUME,
    /** What a dial gauge shows. */
    READING,
    /** Highest pressure on a dial that begins at zero. */
    SCALE_END,
    /** Standard and grade of a dial gauge, such as {@code EN 837-1 class 1.6}. */
    GAUGE_CLASS,
    /** Pressure that a vessel is rated for. */
    RATED_PRESSURE,
    /** Hanger rod, such as {@code 3/8 in rod}. */
    ROD,
    /** Whose safe loads: {@code root area x 9,000 psi}, {@code MSS SP-58 before 2002} or {@code MSS SP-58 of 2002 and later}. */
    ROD_LOADS,
    /** How a beam is held and loaded, such as {@code cantilever, uniform}. */
    LOADING,
    /** Span of a beam, or length of a cantilever. */
    SPAN,
    /** Section modulus of a beam. */
    SECTION_MODULUS,
    /** Second moment of area of a beam. */
    SECOND_MOMENT,
    /** Modulus of elasticity of a beam or of a pipe wall. */
    ELASTICITY,
    /** Allowable bending stress. */
    ALLOWABLE_STRESS,
    /** How far a beam may sag, such as {@code span/240}; not given means that stress alone decides. */
    DEFLECTION_LIMIT,
    /** Design spectral acceleration S_DS, in units of gravity. */
    GROUND_MOTION,
    /** Place in the building z/h, 0 at grade and 1 at the roof. */
    HEIGHT_RATIO,
    /** Component amplification factor a_p. */
    AMPLIFICATION,
    /** Component response modification factor R_p. */
    RESPONSE,
    /** Component importance factor I_p. */
    IMPORTANCE,
    /** Horizontal distance of the hands from the ankles; not given means ideal, as for the other inputs of a lift. */
    REACH,
    /** Height of the hands above the floor where a lift begins. */
    HAND_HEIGHT,
    /** Height of the hands where it ends; not given means at the same height. */
    END_HEIGHT,
    /** How far the body turns, in degrees. */
    TURN,
    /** {@code good}, {@code fair} or {@code poor}. */
    GRIP,
    /** How long the lifting goes on: up to {@code 1}, {@code 2} or {@code 8} hours. */
    LIFTING_HOURS,
    /** How often. */
    LIFTS_PER_MINUTE,
    /** Where the hands are, such as {@code elbow to knuckle}; close to the body. */
    HAND_ZONE,
    /** {@code men} or {@code women}, as the lifting filter sees them. */
    PEOPLE,
    /** Rule for the distance of hangers, such as {@code IMC Table 305.4}. */
    SPACING_RULE,
    /** Kind of pipe, as such rules tell them apart: {@code steel pipe}, {@code copper tube} and others. */
    SPACED_PIPE,
    /** Thermal expansion of a liquid at constant pressure, (1/v) dv/dT, that the source gives in place of a fluid model. */
    EXPANSIVITY,
    /** Isothermal compressibility of a liquid, -(1/v) dv/dp, that the source gives. */
    COMPRESSIBILITY,
    /** Inside diameter of a pipe; not given means rigid walls. */
    BORE,
    /** Thickness of its wall. */
    WALL,
    /** Linear thermal expansion of its wall. */
    LINEAR_EXPANSION,
    /** Poisson's ratio of its wall. */
    POISSON;

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
