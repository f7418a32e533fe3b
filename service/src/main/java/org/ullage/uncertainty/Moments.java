package org.ullage.uncertainty;

/** Mean and variance of a stream, summed from its first value on, so that a spread small beside its value keeps its digits. */
final class Moments {

    private double first;
    private double sum;
    private double squares;
    private long count;

    /** Adds the first values of a block, without what is not finite. */
    void addFinite(double[] values, int size) {
        for (int i = 0; i < size; i++) {
            if (Double.isFinite(values[i])) {
                add(values[i]);
            }
        }
    }

    void add(double value) {
        if (count == 0) {
            first = value;
        }
        double beyond = value - first;
        sum += beyond;
        squares += beyond * beyond;
        count++;
    }

    long count() {
        return count;
    }

    double mean() {
        return first + sum / count;
    }

    /** Estimate of the variance of what the stream was drawn from: by n - 1. */
    double variance() {
        return Math.max(0, squares - sum * sum / count) / (count - 1);
    }
}
