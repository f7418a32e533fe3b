package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;

/** Puts a {@link BarChart} together. Not for many threads. */
public final class BarChartBuilder {

    private final String title;
    private final List<Bar> bars = new ArrayList<>();
    private @Nullable Axis axis;
    private String markName = "mark";
    private String rangeName = "range";
    private String alarmName = "bad";

    BarChartBuilder(String title) {
        this.title = title;
    }

    /**
     * Says what the lengths are.
     *
     * @param label what is measured
     * @param unit the unit of the numbers, empty for a pure number
     * @return this
     */
    public BarChartBuilder axis(String label, String unit) {
        axis = Axis.of(label, unit);
        return this;
    }

    /**
     * Adds a bar below the others.
     *
     * @param bar the bar
     * @return this
     */
    public BarChartBuilder bar(Bar bar) {
        bars.add(bar);
        return this;
    }

    /**
     * Says what the marks are.
     *
     * @param name for the legend
     * @return this
     */
    public BarChartBuilder marks(String name) {
        markName = name;
        return this;
    }

    /**
     * Says what the ranges are.
     *
     * @param name for the legend
     * @return this
     */
    public BarChartBuilder ranges(String name) {
        rangeName = name;
        return this;
    }

    /**
     * Says what is bad about alarming bars.
     *
     * @param name for the legend
     * @return this
     */
    public BarChartBuilder alarms(String name) {
        alarmName = name;
        return this;
    }

    /**
     * The chart.
     *
     * @return the chart
     * @throws MissingInputException if the axis has no name
     */
    public BarChart build() {
        if (axis == null) {
            throw new MissingInputException("axis", "a chart", "say what it shows and in which unit");
        }
        return new BarChart(title, axis, bars, markName, rangeName, alarmName);
    }
}
