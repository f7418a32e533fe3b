package org.ullage.support;

/** Kinds of pipe that hanger rules tell apart. */
public enum SpacedPipe {
    /** Standard-weight steel pipe filled with water. */
    STEEL("steel pipe"),
    /** Standard-weight steel pipe for steam or gas. */
    STEEL_STEAM("steel pipe, steam"),
    /** Steel tubing. */
    STEEL_TUBING("steel tubing"),
    /** Copper tube filled with water. */
    COPPER_TUBE("copper tube"),
    /** Copper pipe in iron pipe sizes. */
    COPPER_PIPE("copper pipe"),
    /** Cross-linked polyethylene tube. */
    PEX("PEX"),
    /** Cross-linked polyethylene with an aluminium layer. */
    PEX_AL_PEX("PEX-AL-PEX"),
    /** Chlorinated polyvinyl chloride. */
    CPVC("CPVC"),
    /** Acrylonitrile butadiene styrene. */
    ABS("ABS"),
    /** Cast iron; 10 ft with lengths of 10 ft. */
    CAST_IRON("cast iron");

    private final String words;

    SpacedPipe(String words) {
        this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return such as {@code steel pipe, steam}
     */
    @Override
    public String toString() {
        return words;
    }
}
