package org.ullage.uncertainty;

import java.util.SplittableRandom;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * Nothing known but the bounds: every value between them is as likely as any other, u = a / sqrt(3) with a half the width. Immutable.
 *
 * @param lowest lower bound, in the coherent SI unit
 * @param highest upper bound
 */
public record UniformSpread(double lowest, double highest) implements Spread {

    /**
     * Checks the order.
     *
     * @param lowest lower bound
     * @param highest upper bound
     * @throws OutOfRangeException if the bounds are not finite or out of order
     */
    public UniformSpread {
        if (!(lowest <= highest) || !Double.isFinite(highest - lowest)) {
            throw new OutOfRangeException(
                    "lowest value",
                    String.valueOf(lowest),
                    "finite and at or below the highest, " + highest,
                    "give the lower bound first");
        }
    }

    @Override
    public double mean() {
        return lowest + (highest - lowest) / 2;
    }

    @Override
    public double standardUncertainty() {
        return (highest - lowest) / 2 / Math.sqrt(Gum.UNIFORM_DIVISOR_SQUARED);
    }

    @Override
    public Source source() {
        return Gum.UNIFORM;
    }

    @Override
    public void fill(double[] values, SplittableRandom random) {
        double width = highest - lowest;
        for (int i = 0; i < values.length; i++) {
            values[i] = lowest + width * random.nextDouble();
        }
    }
}
