package org.ullage.examples.support;

import java.util.List;

/** The columns of a list of supports. */
final class SupportColumns {

    static final String ID = "id";
    static final String NOMINAL = "nominal";
    static final String EMPTY_MASS = "empty_mass";
    static final String RATING = "rating";
    static final String FLUID_DENSITY = "fluid_density";
    static final String STUB_STANDARD = "stub_standard";
    static final String STUB_SIZE = "stub_size";
    static final String STUB_THREADED = "stub_threaded";
    static final String STUB_ARM = "stub_arm";
    static final String BRACKET_ARM = "bracket_arm";
    static final String BRACKET_ROWS = "bracket_rows";
    static final String TOP_ANCHORS = "top_anchors";
    static final String ALL_ANCHORS = "all_anchors";
    static final String ANCHOR_TENSION = "anchor_tension";
    static final String ANCHOR_SHEAR = "anchor_shear";
    static final String GROUND_MOTION = "s_ds";
    static final String IMPORTANCE = "i_p";
    static final String HEIGHT_IN_BUILDING = "z_over_h";
    static final String LIFT_REACH = "lift_reach";
    static final String LIFT_FROM = "lift_from";
    static final String LIFT_TO = "lift_to";

    static final List<String> ALL = List.of(
            ID,
            NOMINAL,
            EMPTY_MASS,
            RATING,
            FLUID_DENSITY,
            STUB_STANDARD,
            STUB_SIZE,
            STUB_THREADED,
            STUB_ARM,
            BRACKET_ARM,
            BRACKET_ROWS,
            TOP_ANCHORS,
            ALL_ANCHORS,
            ANCHOR_TENSION,
            ANCHOR_SHEAR,
            GROUND_MOTION,
            IMPORTANCE,
            HEIGHT_IN_BUILDING,
            LIFT_REACH,
            LIFT_FROM,
            LIFT_TO);

    private SupportColumns() {}
}
