package org.ullage.report;

import java.io.Serializable;
import java.util.List;

/**
 * Points of a {@link LineChart} that belong together. Immutable.
 *
 * @param name what they are, for the legend
 * @param style how they are drawn
 * @param points the points in the order in which they are joined
 */
public record Series(String name, Style style, List<Point> points) implements Serializable {

    /** How points are drawn. */
    public enum Style {
        /** A line through them. */
        LINE,
        /** A mark for each, with a bar over its range. */
        POINTS,
        /** Marks with bars, joined by a thin line: what was seen at one time after another. */
        JOINED_POINTS,
        /** A shaded face between the lower and the upper end of their ranges. */
        BAND
    }

    /**
     * Copies the points.
     *
     * @param name what they are
     * @param style how they are drawn
     * @param points the points
     */
    public Series {
        points = List.copyOf(points);
    }
}
