package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * A value with its combined standard uncertainty by the law of propagation. Immutable.
 *
 * @param value the model at the means of the inputs, in the coherent SI unit of the result
 * @param standardUncertainty combined, zero or more, in the same unit
 * @param contributions what each input is worth in it, in the order of the inputs
 * @param degreesOfFreedom effective degrees of freedom of the standard uncertainty; null if it counts as exact
 */
public record LinearUncertainty(
        double value,
        double standardUncertainty,
        List<Contribution> contributions,
        @Nullable Double degreesOfFreedom) implements Serializable {

    /**
     * Checks the numbers and copies the list.
     *
     * @param value the model at the means
     * @param standardUncertainty combined
     * @param contributions what each input is worth
     * @param degreesOfFreedom effective degrees of freedom, or null
     * @throws OutOfRangeException if a number is not finite, the standard uncertainty negative or the degrees of freedom not above zero
     */
    public LinearUncertainty {
        require("result", value, Double.isFinite(value));
        require("standard uncertainty", standardUncertainty, standardUncertainty >= 0);
        if (degreesOfFreedom != null) {
            require("effective degrees of freedom", degreesOfFreedom, degreesOfFreedom > 0);
        }
        contributions = List.copyOf(contributions);
    }

    private static void require(String name, double number, boolean hasSign) {
        if (!hasSign || !Double.isFinite(number)) {
            throw new OutOfRangeException(
                    name,
                    String.valueOf(number),
                    "finite, a standard uncertainty zero or more, degrees of freedom above zero",
                    "check the inputs and their spreads");
        }
    }

    /**
     * The expanded uncertainty.
     *
     * @param coverageFactor k, above zero; usually 2
     * @return k u, in the coherent SI unit of the result
     * @throws OutOfRangeException if the factor is not above zero, or the product is not finite
     */
    public double expanded(double coverageFactor) {
        if (!(coverageFactor > 0 && Double.isFinite(coverageFactor * standardUncertainty))) {
            throw new OutOfRangeException(
                    "coverage factor",
                    String.valueOf(coverageFactor),
                    "above zero and finite, as its product",
                    "2 is usual");
        }
        return coverageFactor * standardUncertainty;
    }

    /**
     * The coverage factor for a symmetric interval, for a result that is about normal: of Student's distribution with the effective
     * degrees of freedom cut to a whole number (JCGM 100:2008, G.4.1 and G.6.4), of the normal one if they count as unlimited.
     *
     * @param probability that the interval holds the value, between 0 and 1
     * @return k
     * @throws OutOfRangeException if the probability is not between 0 and 1 or too near 1 for a finite factor, or fewer than 1 degree
     *     of freedom is left
     */
    public double coverageFactor(double probability) {
        double upTo = (1 + Probability.require("coverage probability", probability)) / 2;
        if (upTo == 1) {
            throw new OutOfRangeException(
                    "coverage probability",
                    String.valueOf(probability),
                    "below 1 by more than rounding",
                    "take one that the inputs can bear; 0.95 is usual");
        }
        if (degreesOfFreedom == null) {
            return new NormalDistribution(0, 1).inverseCumulativeProbability(upTo);
        }
        double whole = Math.floor(degreesOfFreedom);
        if (whole < 1) {
            throw new OutOfRangeException(
                    "effective degrees of freedom",
                    String.valueOf(degreesOfFreedom),
                    "1 or more",
                    "know the standard uncertainties better, or draw instead");
        }
        return new TDistribution(whole).inverseCumulativeProbability(upTo);
    }

    /**
     * Where the calculation comes from.
     *
     * @return its source
     */
    public Source source() {
        return Gum.PROPAGATION;
    }
}
