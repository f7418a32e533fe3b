package org.ullage.loop;

import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Units;

/** Rules of thumb for contents by area. */
public enum AreaRule {
    /** A whole cooling system with air alone in the rooms, by floor area. */
    COOLING_ALL_AIR,
    /** A whole cooling system with air and water in the rooms, by floor area. */
    COOLING_AIR_WATER,
    /** A whole heating system with air alone in the rooms, by floor area. */
    HEATING_ALL_AIR,
    /** A whole heating system with air and water in the rooms, by floor area. */
    HEATING_AIR_WATER,
    /** The storage tank of a solar system, by collector area. */
    SOLAR_STORAGE;

    /**
     * The contents for an area.
     *
     * @param area floor area or collector area
     * @return a line for a list
     */
    public ContentsItem item(Area area) {
        ContentsRule rule = ContentsRule.of(this);
        return rule.item(
                Amount.of(area), rule.per().equals("m2") ? area.in(Units.SQUARE_METRE) : area.in(Units.SQUARE_FOOT));
    }

    /**
     * Where the rule comes from.
     *
     * @return the source
     */
    public Source source() {
        return ContentsRule.of(this).source();
    }
}
