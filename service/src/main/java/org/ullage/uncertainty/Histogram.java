package org.ullage.uncertainty;

import java.io.Serializable;

/**
 * Quantiles of any number of values in fixed memory: values are counted in equal bins over a range that a pilot run found, widened by
 * half of itself at both ends. What falls beyond is counted too and reaches to the least and greatest value.
 *
 * <p>Counts do not depend on the order of the values, unlike the markers of the P2 algorithm, and a bin is a fixed part of the spread,
 * unlike the bins of a sketch with relative accuracy, which sees nothing of a spread that is small beside its value. Within a bin the
 * values count as evenly spread, so a quantile is off by less than a bin, 1/4096 of the pilot's range.
 */
final class Histogram implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int BINS = 8192;

    private final double low;
    private final double high;
    private final double scale;
    private final int[] counts = new int[BINS];
    private int below;
    private int above;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private long total;

    /**
     * @param pilotLeast least value of the pilot run
     * @param pilotGreatest greatest value of it; may be the same
     */
    Histogram(double pilotLeast, double pilotGreatest) {
        double margin = (pilotGreatest - pilotLeast) / 2;
        this.low = pilotLeast - margin;
        this.high = pilotGreatest + margin;
        this.scale = high > low ? BINS / (high - low) : 0;
    }

    /** Adds the first values of a block, without what is not finite. */
    void addFinite(double[] values, int count) {
        for (int i = 0; i < count; i++) {
            if (Double.isFinite(values[i])) {
                add(values[i]);
            }
        }
    }

    void add(double value) {
        total++;
        if (value < least) {
            least = value;
        }
        if (value > greatest) {
            greatest = value;
        }
        double place = (value - low) * scale;
        if (place >= 0 && place < BINS) {
            counts[(int) place]++;
        } else if (place < 0) {
            below++;
        } else {
            above++;
        }
    }

    long total() {
        return total;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    /** Count of bin i; -1 is what lies below all bins, BINS what lies above. */
    private int count(int i) {
        return i < 0 ? below : i < BINS ? counts[i] : above;
    }

    /** Left end of bin i, before which some values lie; never beyond the values there are. */
    private double left(int i, long before) {
        return before == 0 ? least : Math.min(greatest, Math.max(least, low + i * ((high - low) / BINS)));
    }

    /** Right end of bin i, up to which some values lie. */
    private double right(int i, long upTo) {
        return upTo == total ? greatest : Math.min(greatest, low + (i + 1) * ((high - low) / BINS));
    }

    /**
     * The value below which a share of all values lies.
     *
     * @param share from 0 to 1
     */
    double quantile(double share) {
        double rank = share * total;
        long before = 0;
        for (int i = -1; i <= BINS; i++) {
            int count = count(i);
            if (count > 0 && before + count >= rank) {
                double part = (rank - before) / count;
                double left = left(i, before);
                // A value on an edge may have been counted on the other side of it by a rounding.
                double right = Math.max(left, right(i, before + count));
                return part == 1 ? right : Math.min(right, left + part * (right - left));
            }
            before += count;
        }
        return greatest;
    }

    /** The share of all values at or below a value: the inverse of {@link #quantile}. */
    double shareUpTo(double value) {
        if (value < least) {
            return 0;
        }
        if (value >= greatest) {
            return 1;
        }
        long before = 0;
        for (int i = -1; i <= BINS; i++) {
            int count = count(i);
            double left = left(i, before);
            double right = right(i, before + count);
            if (count > 0 && value < right) {
                double part = value > left ? (value - left) / (right - left) : 0;
                return (before + count * part) / total;
            }
            before += count;
        }
        return 1;
    }
}
