package org.ullage.support;

import java.io.Serializable;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;

/**
 * A load at a place on a beam. Immutable.
 *
 * @param load its size, zero or more
 * @param place distance from the left support, zero or more
 */
public record PointLoad(Force load, Length place) implements Serializable {

    /**
     * Checks the signs.
     *
     * @param load its size
     * @param place distance from the left support
     * @throws OutOfRangeException if one of the two is negative
     */
    public PointLoad {
        Inputs.requireNotNegative("load on a beam", load, "uplift is not covered");
        Inputs.requireNotNegative("place of a load", place, "measure it from the left support");
    }

    /**
     * A vessel or something else by its mass.
     *
     * @param mass such as a waterlogged mass
     * @param place distance of its centre of gravity from the left support, zero or more
     * @return the load
     * @throws OutOfRangeException if the place is negative
     */
    public static PointLoad of(Mass mass, Length place) {
        return new PointLoad(mass.weight(), place);
    }
}
