package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * How warm the water in the vessels is, which decides how much room a kilogram of it takes there. Immutable.
 *
 * @param kind the convention
 * @param temperature the water's own temperature; null unless it has one
 */
public record VesselWater(Kind kind, @Nullable Temperature temperature) implements Serializable {

    /**
     * Water that enters is as warm as the loop and water that was there keeps its volume, as sizing rules count: the default. A vessel
     * at the end of a long pipe stays cooler, which asks for less room.
     */
    public static final VesselWater ENTERS_AS_WARM_AS_LOOP = new VesselWater(Kind.ENTERS_AS_WARM_AS_LOOP, null);

    /** All water in the vessels is as warm as the loop: the most room it can take. */
    public static final VesselWater AS_WARM_AS_LOOP = new VesselWater(Kind.AS_WARM_AS_LOOP, null);

    /** The conventions. */
    public enum Kind {
        /** Only what enters is as warm as the loop. */
        ENTERS_AS_WARM_AS_LOOP,
        /** All of it is as warm as the loop. */
        AS_WARM_AS_LOOP,
        /** It has a temperature of its own. */
        OWN_TEMPERATURE
    }

    /**
     * Checks that a temperature is there when it is needed.
     *
     * @param kind the convention
     * @param temperature the water's own temperature, or null
     * @throws MissingInputException if the water is to have its own temperature and none is given
     */
    public VesselWater {
        if (kind == Kind.OWN_TEMPERATURE && temperature == null) {
            throw new MissingInputException(
                    "temperature of the water in the vessels", "a mass balance with it", "give it or take the default");
        }
    }

    /**
     * Water in the vessels that keeps one temperature.
     *
     * @param temperature its own
     * @return the convention
     */
    public static VesselWater at(Temperature temperature) {
        return new VesselWater(Kind.OWN_TEMPERATURE, temperature);
    }

    /**
     * The convention in words.
     *
     * @param system metric or inch-pound
     * @return such as {@code water in the vessels at 20 degC}
     */
    public String text(UnitSystem system) {
        if (temperature != null && kind == Kind.OWN_TEMPERATURE) {
            return "water in the vessels at " + temperature.text(system);
        }
        return kind == Kind.AS_WARM_AS_LOOP
                ? "water in the vessels as warm as the loop"
                : "water enters the vessels as warm as the loop, what was there keeps its volume";
    }
}
