package org.ullage.report;

import java.io.Serializable;
import java.util.stream.DoubleStream;

/**
 * An axis of a chart: what its numbers are. Immutable.
 *
 * @param label what is measured
 * @param unit the unit of the numbers, empty for a pure number
 * @param isCalendar whether the numbers are days since 1970-01-01, shown as dates
 */
public record Axis(String label, String unit, boolean isCalendar) implements Serializable {

    /**
     * An axis of numbers.
     *
     * @param label what is measured
     * @param unit their unit, empty for a pure number
     * @return the axis
     */
    public static Axis of(String label, String unit) {
        return new Axis(label, unit, false);
    }

    /**
     * An axis of dates.
     *
     * @param label what happened on them
     * @return the axis
     */
    public static Axis dates(String label) {
        return new Axis(label, "", true);
    }

    /**
     * The axis for people.
     *
     * @return such as {@code gauge pressure, bar}
     */
    public String text() {
        return unit.isEmpty() ? label : label + ", " + unit;
    }

    /** A number of this axis for people. */
    String text(double number) {
        return isCalendar ? Figures.date(number) : Figures.withUnit(number, unit);
    }

    Extent extent(DoubleStream numbers) {
        return isCalendar ? Extent.ofDays(numbers) : Extent.of(numbers);
    }

    /** At most so many intervals, 2 or more. */
    Ticks ticks(Extent extent, int most) {
        return isCalendar ? DateTicks.covering(extent, most) : NumberTicks.covering(extent, most);
    }
}
