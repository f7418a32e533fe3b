package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.report.Series.Style;

/** Puts a {@link LineChart} together; what is added first lies at the back. Not for many threads. */
public final class LineChartBuilder {

    private final String title;
    private final List<Series> series = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();
    private @Nullable Axis x;
    private @Nullable Axis y;
    private boolean startsAtZero;

    LineChartBuilder(String title) {
        this.title = title;
    }

    /**
     * Names the axis along the bottom.
     *
     * @param label what is measured
     * @param unit the unit of the numbers, empty for a pure number
     * @return this
     */
    public LineChartBuilder x(String label, String unit) {
        x = Axis.of(label, unit);
        return this;
    }

    /**
     * Makes the axis along the bottom one of dates; give points by {@link Point#on}.
     *
     * @param label what happened on them
     * @return this
     */
    public LineChartBuilder dates(String label) {
        x = Axis.dates(label);
        return this;
    }

    /**
     * Names the axis at the left.
     *
     * @param label what is measured
     * @param unit the unit of the numbers, empty for a pure number
     * @return this
     */
    public LineChartBuilder y(String label, String unit) {
        y = Axis.of(label, unit);
        return this;
    }

    /**
     * Lets the left axis show zero even if no point is near.
     *
     * @return this
     */
    public LineChartBuilder fromZero() {
        startsAtZero = true;
        return this;
    }

    /**
     * Adds a line.
     *
     * @param name what it is
     * @param points points close enough for a smooth line
     * @return this
     */
    public LineChartBuilder line(String name, List<Point> points) {
        return series(name, Style.LINE, points);
    }

    /**
     * Adds points, each with a bar over its range.
     *
     * @param name what they are
     * @param points the points
     * @return this
     */
    public LineChartBuilder points(String name, List<Point> points) {
        return series(name, Style.POINTS, points);
    }

    /**
     * Adds points that are joined by a thin line.
     *
     * @param name what they are
     * @param points the points in their order
     * @return this
     */
    public LineChartBuilder joinedPoints(String name, List<Point> points) {
        return series(name, Style.JOINED_POINTS, points);
    }

    /**
     * Adds a band between the ends of the points' ranges.
     *
     * @param name what it is
     * @param points see {@link Point#between}
     * @return this
     */
    public LineChartBuilder band(String name, List<Point> points) {
        return series(name, Style.BAND, points);
    }

    /**
     * Adds a horizontal line.
     *
     * @param name what it is
     * @param height its height
     * @return this
     */
    public LineChartBuilder level(String name, double height) {
        levels.add(new Level(name, height, false));
        return this;
    }

    /**
     * Adds a horizontal line that must not be passed.
     *
     * @param name what it is
     * @param height its height
     * @return this
     */
    public LineChartBuilder limit(String name, double height) {
        levels.add(new Level(name, height, true));
        return this;
    }

    private LineChartBuilder series(String name, Style style, List<Point> points) {
        series.add(new Series(name, style, points));
        return this;
    }

    /**
     * The chart.
     *
     * @return the chart
     * @throws MissingInputException if an axis has no name
     * @throws org.ullage.quantity.OutOfRangeException if a date is not in the years 1 to 2999
     */
    public LineChart build() {
        return new LineChart(
                title, named("axis along the bottom", x), named("axis at the left", y), series, levels, startsAtZero);
    }

    private static Axis named(String which, @Nullable Axis axis) {
        if (axis == null) {
            throw new MissingInputException(which, "a chart", "say what it shows and in which unit");
        }
        return axis;
    }
}
