package org.ullage.report;

import java.util.stream.DoubleStream;

/** The lowest and the highest of the numbers on an axis; always a real stretch, so that an axis can be drawn. */
record Extent(double low, double high) {

    /** Numbers this close, relative to the larger, count as equal. */
    private static final double SAME = 1e-9;

    /** The stretch that holds all numbers; 0 to 1 without any, and with air on both sides if they are all the same. */
    static Extent of(DoubleStream numbers) {
        double[] sorted = numbers.sorted().toArray();
        if (sorted.length == 0) {
            return new Extent(0, 1);
        }
        double low = sorted[0];
        double high = sorted[sorted.length - 1];
        double largest = Math.max(Math.abs(low), Math.abs(high));
        if (high - low > largest * SAME && high - low > SAME * SAME) {
            return new Extent(low, high);
        }
        double air = largest > SAME * SAME ? largest / 10 : 1;
        return new Extent(low - air, high + air);
    }

    /** The same for days, where a day is the least air. */
    static Extent ofDays(DoubleStream days) {
        double[] sorted = days.sorted().toArray();
        if (sorted.length == 0) {
            return new Extent(0, 1);
        }
        double first = sorted[0];
        double last = sorted[sorted.length - 1];
        return first < last ? new Extent(first, last) : new Extent(first - 1, last + 1);
    }
}
