package org.ullage.report;

import java.util.List;
import java.util.stream.DoubleStream;
import org.ullage.quantity.OutOfRangeException;

/**
 * A chart of heights over a number or a date: lines, bands, points with bars, and levels. The numbers are plain, in the unit that the
 * axis names: convert quantities to the reader's units first. Immutable; begin with {@link #titled}.
 *
 * @param title what it shows
 * @param x the axis along the bottom
 * @param y the axis at the left
 * @param series what is drawn, the first at the back; bands lie behind everything else
 * @param levels horizontal lines
 * @param startsAtZero whether the left axis shows zero even if no point is near
 */
public record LineChart(String title, Axis x, Axis y, List<Series> series, List<Level> levels, boolean startsAtZero)
        implements Chart {

    /**
     * Copies the lists and checks dates.
     *
     * @param title what it shows
     * @param x the axis along the bottom
     * @param y the axis at the left
     * @param series what is drawn
     * @param levels horizontal lines
     * @param startsAtZero whether the left axis shows zero
     * @throws OutOfRangeException if the left axis is one of dates, or a date is not in the years 1 to 2999
     */
    public LineChart {
        series = List.copyOf(series);
        levels = List.copyOf(levels);
        if (y.isCalendar()) {
            throw new OutOfRangeException("left axis", "of dates", "of numbers", "put the dates along the bottom");
        }
        if (x.isCalendar()) {
            series.forEach(one -> one.points().forEach(point -> Figures.checkedDay(point.x())));
        }
    }

    /**
     * Begins a chart.
     *
     * @param title what it shows
     * @return a builder
     */
    public static LineChartBuilder titled(String title) {
        return new LineChartBuilder(title);
    }

    @Override
    public String description() {
        return LineChartWords.of(this);
    }

    @Override
    public String svg(ChartWidth width) {
        return new LineChartDrawing(this, width.pixels()).svg();
    }

    boolean isEmpty() {
        return levels.isEmpty() && series.stream().allMatch(one -> one.points().isEmpty());
    }

    Extent extentOfX() {
        return x.extent(
                series.stream().flatMapToDouble(one -> one.points().stream().mapToDouble(Point::x)));
    }

    Extent extentOfY() {
        DoubleStream points = series.stream()
                .flatMapToDouble(one ->
                        one.points().stream().flatMapToDouble(point -> DoubleStream.of(point.low(), point.high())));
        DoubleStream fixed = levels.stream().mapToDouble(Level::y);
        DoubleStream zero = startsAtZero ? DoubleStream.of(0) : DoubleStream.empty();
        return y.extent(DoubleStream.concat(DoubleStream.concat(points, fixed), zero));
    }
}
