package org.ullage.report;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * A bar of a {@link BarChart}. Immutable.
 *
 * @param name what it stands for
 * @param value its length
 * @param note what stands behind the value, may be empty
 * @param mark a value to hold it against, or null
 * @param low lowest the value may be, or null
 * @param high highest the value may be, or null
 * @param isAlarming whether the value is bad; it is drawn to be seen first
 */
public record Bar(
        String name,
        double value,
        String note,
        @Nullable Double mark,
        @Nullable Double low,
        @Nullable Double high,
        boolean isAlarming)
        implements Serializable {

    /**
     * Checks the numbers.
     *
     * @param name what it stands for
     * @param value its length
     * @param note what stands behind the value
     * @param mark a value to hold it against, or null
     * @param low lowest the value may be, or null
     * @param high highest the value may be, or null
     * @param isAlarming whether the value is bad
     * @throws OutOfRangeException if a number is not finite or beyond 1e15, or the range has one end only or is out of order
     */
    public Bar {
        Figures.checked("value of a bar", value);
        Figures.checked("mark of a bar", mark == null ? value : mark);
        Figures.checked("lower end of a bar's range", low == null ? value : low);
        Figures.checked("upper end of a bar's range", high == null ? value : high);
        if ((low == null) != (high == null) || (low != null && high != null && low > high)) {
            throw new OutOfRangeException(
                    "range of a bar", "from " + low + " to " + high, "two ends in order", "give both ends");
        }
    }

    /**
     * A bar.
     *
     * @param name what it stands for
     * @param value its length
     * @return the bar without mark, range and note
     * @throws OutOfRangeException if the value is not finite or beyond 1e15
     */
    public static Bar of(String name, double value) {
        return new Bar(name, value, "", null, null, null, false);
    }

    /**
     * The bar with words behind its value.
     *
     * @param words a few
     * @return the bar
     */
    public Bar noted(String words) {
        return new Bar(name, value, words, mark, low, high, isAlarming);
    }

    /**
     * The bar with a value to hold it against.
     *
     * @param at where the mark is
     * @return the bar
     * @throws OutOfRangeException if the mark is not finite or beyond 1e15
     */
    public Bar markedAt(double at) {
        return new Bar(name, value, note, at, low, high, isAlarming);
    }

    /**
     * The bar with the range in which its value lies.
     *
     * @param lowest lowest the value may be
     * @param highest highest the value may be
     * @return the bar
     * @throws OutOfRangeException if an end is not finite or beyond 1e15, or they are out of order
     */
    public Bar within(double lowest, double highest) {
        return new Bar(name, value, note, mark, lowest, highest, isAlarming);
    }

    /**
     * The bar as one to be seen first.
     *
     * @return the bar
     */
    public Bar alarming() {
        return new Bar(name, value, note, mark, low, high, true);
    }
}
