package org.ullage.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.ullage.quantity.OutOfRangeException;

/**
 * A chart of lengths to compare, one horizontal bar below the other, each with its value in figures and perhaps a mark to hold it
 * against and a range. The numbers are plain, in the unit that the axis names: convert quantities to the reader's units first. Immutable;
 * begin with {@link #titled}.
 *
 * @param title what it shows
 * @param axis what the lengths are
 * @param bars the bars from top to bottom
 * @param markName what the marks of the bars are, for the legend
 * @param rangeName what the ranges of the bars are, for the legend
 * @param alarmName what is bad about alarming bars, for the legend
 */
public record BarChart(String title, Axis axis, List<Bar> bars, String markName, String rangeName, String alarmName)
        implements Chart {

    /**
     * Copies the bars.
     *
     * @param title what it shows
     * @param axis what the lengths are
     * @param bars the bars
     * @param markName what their marks are
     * @param rangeName what their ranges are
     * @param alarmName what is bad about alarming bars
     * @throws OutOfRangeException if the axis is one of dates
     */
    public BarChart {
        bars = List.copyOf(bars);
        if (axis.isCalendar()) {
            throw new OutOfRangeException("axis of bars", "of dates", "of numbers", "take a line chart for dates");
        }
    }

    /**
     * Begins a chart.
     *
     * @param title what it shows
     * @return a builder
     */
    public static BarChartBuilder titled(String title) {
        return new BarChartBuilder(title);
    }

    @Override
    public String description() {
        String told = bars.stream().map(this::told).collect(Collectors.joining("; "));
        return axis.text() + ": " + (bars.isEmpty() ? "no data" : told) + ".";
    }

    private String told(Bar bar) {
        String mark = bar.mark() == null ? "" : ", " + markName + " " + axis.text(bar.mark());
        String range = bar.low() == null || bar.high() == null
                ? ""
                : ", " + rangeName + " " + axis.text(bar.low()) + " to " + axis.text(bar.high());
        return bar.name() + " " + label(bar) + mark + range + (bar.isAlarming() ? ", " + alarmName : "");
    }

    /** What stands behind a bar. */
    String label(Bar bar) {
        return axis.text(bar.value()) + (bar.note().isEmpty() ? "" : ", " + bar.note());
    }

    @Override
    public String svg(ChartWidth width) {
        return new BarChartDrawing(this, width.pixels()).svg();
    }

    /** Zero belongs to it: lengths are compared from there. */
    Extent extent() {
        return Extent.of(DoubleStream.concat(DoubleStream.of(0), bars.stream().flatMapToDouble(BarChart::numbers)));
    }

    private static DoubleStream numbers(Bar bar) {
        double low = bar.low() == null ? bar.value() : bar.low();
        double mark = bar.mark() == null ? bar.value() : bar.mark();
        return DoubleStream.of(bar.value(), low, mark, furthest(bar));
    }

    /** The largest number that is drawn for a bar, zero included. */
    static double furthest(Bar bar) {
        double mark = bar.mark() == null ? 0 : bar.mark();
        double high = bar.high() == null ? 0 : bar.high();
        return Math.max(Math.max(0, bar.value()), Math.max(mark, high));
    }
}
