package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.SplittableRandom;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * What is known of one value: its distribution. All numbers are in the coherent SI unit of the quantity it belongs to, so that it can
 * stand behind any model; {@link Uncertain} makes one from quantities with their units. Immutable.
 */
public sealed interface Spread extends Serializable permits NormalSpread, UniformSpread, TriangularSpread {

    /**
     * The expectation.
     *
     * @return in the coherent SI unit
     */
    double mean();

    /**
     * The standard deviation.
     *
     * @return in the coherent SI unit, zero or more
     */
    double standardUncertainty();

    /**
     * The lowest value that counts as possible.
     *
     * @return the lower bound; of a normal distribution, which has none, 4 standard uncertainties below the mean
     */
    double lowest();

    /**
     * The highest value that counts as possible.
     *
     * @return the upper bound; of a normal distribution, which has none, 4 standard uncertainties above the mean
     */
    double highest();

    /**
     * Where the way from what was stated to the standard uncertainty comes from.
     *
     * @return its source
     */
    Source source();

    /**
     * Draws values.
     *
     * @param values is filled with draws
     * @param random where they come from; the same state gives the same bits on every machine
     */
    void fill(double[] values, SplittableRandom random);

    /**
     * Whether there is no spread.
     *
     * @return true if every draw is the same value
     */
    default boolean isCertain() {
        return standardUncertainty() == 0;
    }

    /**
     * A value without spread.
     *
     * @param value in the coherent SI unit
     * @return the spread that holds nothing else
     * @throws OutOfRangeException if it is not finite
     */
    static Spread exactly(double value) {
        return new NormalSpread(value, 0);
    }

    /**
     * A normal distribution.
     *
     * @param mean the expectation, in the coherent SI unit
     * @param standardUncertainty the standard deviation, zero or more
     * @return the spread
     * @throws OutOfRangeException if a number is not finite or the uncertainty is negative
     */
    static Spread normal(double mean, double standardUncertainty) {
        return new NormalSpread(mean, standardUncertainty);
    }

    /**
     * Nothing known but the bounds.
     *
     * @param lowest lower bound, in the coherent SI unit
     * @param highest upper bound
     * @return the spread
     * @throws OutOfRangeException if the bounds are not finite or out of order
     */
    static Spread uniform(double lowest, double highest) {
        return new UniformSpread(lowest, highest);
    }

    /**
     * Bounds and the value between them that is most likely.
     *
     * @param lowest lower bound, in the coherent SI unit
     * @param mode most likely value
     * @param highest upper bound
     * @return the spread
     * @throws OutOfRangeException if the numbers are not finite or out of order
     */
    static Spread triangular(double lowest, double mode, double highest) {
        return new TriangularSpread(lowest, mode, highest);
    }
}
