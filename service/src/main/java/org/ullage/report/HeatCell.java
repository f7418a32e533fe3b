package org.ullage.report;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * One cell of a heat map.
 *
 * @param value the number that gives the colour, or null for a gap
 * @param label the number as text, or what a gap means
 */
public record HeatCell(@Nullable Double value, String label) implements Serializable {

    /**
     * Checks the number.
     *
     * @param value the number that gives the colour, or null for a gap
     * @param label the number as text, or what a gap means
     * @throws OutOfRangeException if the number is not finite
     */
    public HeatCell {
        if (value != null && !Double.isFinite(value)) {
            throw new OutOfRangeException("number of a cell", String.valueOf(value), "finite", "leave a gap");
        }
    }
}
