package org.ullage.support;

import java.io.Serializable;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

/**
 * A horizontal force at the vessel's centre of gravity, such as that of an earthquake. Immutable.
 *
 * @param force its size, zero or more
 * @param arm vertical distance from the fixing to the centre of gravity, zero or more
 */
public record SideForce(Force force, Length arm) implements Serializable {

    /** No side force. */
    public static final SideForce NONE = new SideForce(Force.newtons(0), Length.metres(0));

    /**
     * Checks the signs.
     *
     * @param force its size
     * @param arm its lever arm
     * @throws OutOfRangeException if one of the two is negative
     */
    public SideForce {
        Inputs.requireNotNegative("side force", force, "give its size without a sign");
        Inputs.requireNotNegative("arm of the side force", arm, "give the distance without a sign");
    }
}
