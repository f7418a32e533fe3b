package org.ullage.support;

import java.io.Serializable;
import org.ullage.quantity.Force;
import org.ullage.quantity.OutOfRangeException;

/**
 * What one anchor may carry for long in the base it is set in, as its approval or the engineer gives it. There is no default. Immutable.
 *
 * @param tension allowable pull along the anchor, above zero
 * @param shear allowable force across it, above zero
 */
public record AnchorStrength(Force tension, Force shear) implements Serializable {

    /**
     * Checks the signs.
     *
     * @param tension allowable pull
     * @param shear allowable force across
     * @throws OutOfRangeException if one of the two is zero or negative
     */
    public AnchorStrength {
        Inputs.requirePositive("allowable anchor tension", tension, "take it from the anchor's approval for this base");
        Inputs.requirePositive("allowable anchor shear", shear, "take it from the anchor's approval for this base");
    }
}
