package org.ullage.report;

import java.io.Serializable;

/**
 * A height that matters whatever the place along the axis: a horizontal line with its name, such as a charge or a relief setting.
 * Immutable.
 *
 * @param name what it is
 * @param y its height
 * @param isLimit whether it must not be passed; it is drawn to be seen first
 */
public record Level(String name, double y, boolean isLimit) implements Serializable {

    /**
     * Checks the height.
     *
     * @param name what it is
     * @param y its height
     * @param isLimit whether it must not be passed
     * @throws org.ullage.quantity.OutOfRangeException if the height is not finite or beyond 1e15
     */
    public Level {
        Figures.checked("height of a level", y);
    }
}
