package org.ullage.uncertainty;

import java.util.SplittableRandom;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * Bounds and the value between them that is most likely; the mean is a third of the sum of the three. Immutable.
 *
 * @param lowest lower bound, in the coherent SI unit
 * @param mode most likely value
 * @param highest upper bound
 */
public record TriangularSpread(double lowest, double mode, double highest) implements Spread {

    /** Lowest, most likely and highest weigh the same in the mean. */
    private static final int CORNERS = 3;

    /**
     * Checks the order.
     *
     * @param lowest lower bound
     * @param mode most likely value
     * @param highest upper bound
     * @throws OutOfRangeException if the numbers or the variance are not finite, or out of order
     */
    public TriangularSpread {
        double width = highest - lowest;
        // The variance goes with the square of the width.
        if (!(lowest <= mode && mode <= highest) || !Double.isFinite(width * width)) {
            throw new OutOfRangeException(
                    "most likely value",
                    String.valueOf(mode),
                    "finite, from the lowest " + lowest + " to the highest " + highest,
                    "give lowest, most likely and highest in this order");
        }
    }

    @Override
    public double mean() {
        return lowest + ((mode - lowest) + (highest - lowest)) / CORNERS;
    }

    @Override
    public double standardUncertainty() {
        // with the lowest value as zero the general formula loses no digits
        double b = highest - lowest;
        double c = mode - lowest;
        return Math.sqrt((b * b + c * c - b * c) / Gum.TRIANGULAR_DIVISOR);
    }

    @Override
    public Source source() {
        return Gum.TRIANGULAR;
    }

    /**
     * From the mode part of the way, sqrt(u), towards a uniform draw between the bounds: the triangular distribution without asking on
     * which side of the mode a draw falls.
     */
    @Override
    public void fill(double[] values, SplittableRandom random) {
        double width = highest - lowest;
        double below = lowest - mode;
        for (int i = 0; i < values.length; i++) {
            double towards = below + width * random.nextDouble();
            values[i] = mode + towards * Math.sqrt(random.nextDouble());
        }
    }
}
