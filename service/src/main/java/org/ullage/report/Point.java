package org.ullage.report;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.OutOfRangeException;

/**
 * A point of a {@link LineChart}, perhaps with a range in which its height lies. Immutable.
 *
 * @param x along the axis
 * @param y its height
 * @param low lowest it may be
 * @param high highest it may be
 */
public record Point(double x, double y, double low, double high) implements Serializable {

    /**
     * Checks the numbers.
     *
     * @param x along the axis
     * @param y its height
     * @param low lowest it may be, at most {@code y}
     * @param high highest it may be, at least {@code y}
     * @throws OutOfRangeException if a number is not finite or beyond 1e15, or the range does not hold {@code y}
     */
    public Point {
        Figures.checked("x of a point", x);
        Figures.checked("y of a point", y);
        Figures.checked("lower end of a point's range", low);
        Figures.checked("upper end of a point's range", high);
        if (low > y || high < y) {
            throw new OutOfRangeException(
                    "range of a point",
                    "from " + low + " to " + high,
                    "a range that holds the point's y " + y,
                    "check that its ends were not swapped");
        }
    }

    /**
     * A point.
     *
     * @param x along the axis
     * @param y its height
     * @return the point, without range
     * @throws OutOfRangeException if a number is not finite or beyond 1e15
     */
    public static Point at(double x, double y) {
        return new Point(x, y, y, y);
    }

    /**
     * A point on a calendar.
     *
     * @param date along the axis
     * @param y its height
     * @return the point, without range
     * @throws OutOfRangeException if a number is not finite or beyond 1e15
     */
    public static Point on(LocalDate date, double y) {
        return at((double) date.toEpochDay(), y);
    }

    /**
     * A place of a band.
     *
     * @param x along the axis
     * @param low its lower edge
     * @param high its upper edge
     * @return the point in the middle with its range
     * @throws OutOfRangeException if a number is not finite or beyond 1e15, or the edges are out of order
     */
    public static Point between(double x, double low, double high) {
        return new Point(x, low + (high - low) / 2, low, high);
    }

    /**
     * The point with the range in which its height lies, such as what the gauge leaves open.
     *
     * @param lowest lowest it may be
     * @param highest highest it may be
     * @return the point
     * @throws OutOfRangeException if an end is not finite or beyond 1e15, or the range does not hold the point
     */
    public Point within(double lowest, double highest) {
        return new Point(x, y, lowest, highest);
    }

    /**
     * Points from two rows of numbers.
     *
     * @param xs along the axis
     * @param ys their heights
     * @return the points in the same order
     * @throws OutOfRangeException if the rows differ in length, or a number is not finite or beyond 1e15
     */
    public static List<Point> list(double[] xs, double[] ys) {
        if (xs.length != ys.length) {
            throw new OutOfRangeException(
                    "number of heights",
                    Integer.toString(ys.length),
                    "the number of places " + xs.length,
                    "give pairs");
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xs.length; i++) {
            points.add(at(xs[i], ys[i]));
        }
        return List.copyOf(points);
    }

    /** Whether its height may be another. */
    boolean hasRange() {
        return low < high;
    }
}
