package org.ullage.uncertainty;

import java.util.SplittableRandom;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * A normal distribution. Immutable.
 *
 * @param mean the expectation, in the coherent SI unit
 * @param standardUncertainty the standard deviation, zero or more
 */
public record NormalSpread(double mean, double standardUncertainty) implements Spread {

    /** Standard uncertainties either way within which a value counts as possible: all but 6 of 100 000 draws. */
    private static final int REACH = 4;

    /**
     * Checks the numbers.
     *
     * @param mean the expectation
     * @param standardUncertainty the standard deviation
     * @throws OutOfRangeException if a number is not finite, or the uncertainty is negative or so large that the
     *     bounds are not finite
     */
    public NormalSpread {
        if (!Double.isFinite(mean)) {
            throw new OutOfRangeException("mean", String.valueOf(mean), "finite", "check the value");
        }
        if (!(standardUncertainty >= 0 && Double.isFinite(Math.abs(mean) + REACH * standardUncertainty))) {
            throw new OutOfRangeException(
                    "standard uncertainty",
                    String.valueOf(standardUncertainty),
                    "zero or more and finite, as must be " + REACH + " times it either way of the mean",
                    "give it without a sign and check the number");
        }
    }

    @Override
    public double lowest() {
        return mean - REACH * standardUncertainty;
    }

    @Override
    public double highest() {
        return mean + REACH * standardUncertainty;
    }

    @Override
    public Source source() {
        return Gum.STATED;
    }

    @Override
    public void fill(double[] values, SplittableRandom random) {
        for (int i = 0; i < values.length; i++) {
            values[i] = mean + standardUncertainty * Ziggurat.normal(random);
        }
    }
}
