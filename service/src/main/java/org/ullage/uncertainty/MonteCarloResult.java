package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * The distribution of a wanted value as drawn, in the coherent SI unit of the result. Draws that the model refuses are counted in
 * {@link #refusals()}; everything else is about the draws with an answer. Immutable.
 */
public final class MonteCarloResult implements Serializable {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // the lists of List.copyOf and List.of are serializable
    private final List<ModelInput> inputs;

    private final long seed;
    private final int draws;
    private final TreeMap<String, Long> refusals;
    private final double mean;
    private final double standardUncertainty;
    private final double[] shares;
    private final Histogram histogram;

    MonteCarloResult(
            List<ModelInput> inputs,
            long seed,
            int draws,
            Map<String, Long> refusals,
            double mean,
            double standardUncertainty,
            double[] shares,
            Histogram histogram) {
        this.inputs = inputs;
        this.seed = seed;
        this.draws = draws;
        this.refusals = new TreeMap<>(refusals);
        this.mean = mean;
        this.standardUncertainty = standardUncertainty;
        this.shares = shares;
        this.histogram = histogram;
    }

    /**
     * What was drawn from.
     *
     * @return the inputs in order
     */
    public List<ModelInput> inputs() {
        return inputs;
    }

    /**
     * The seed that repeats these draws.
     *
     * @return as given
     */
    public long seed() {
        return seed;
    }

    /**
     * All draws.
     *
     * @return with and without an answer
     */
    public int draws() {
        return draws;
    }

    /**
     * Draws with an answer.
     *
     * @return from 2 to all
     */
    public long answered() {
        return histogram.total();
    }

    /**
     * Draws without an answer.
     *
     * @return how many, by what was refused
     */
    public Map<String, Long> refusals() {
        return Collections.unmodifiableMap(refusals);
    }

    /**
     * The mean.
     *
     * @return of the draws with an answer
     */
    public double mean() {
        return mean;
    }

    /**
     * The standard uncertainty: the standard deviation of the draws with an answer.
     *
     * @return zero or more
     */
    public double standardUncertainty() {
        return standardUncertainty;
    }

    /**
     * How far chance may have moved the mean.
     *
     * @return standard deviation of the mean, u / sqrt(n)
     */
    public double standardErrorOfMean() {
        return standardUncertainty / Math.sqrt((double) answered());
    }

    /**
     * The least answer drawn.
     *
     * @return the value
     */
    public double least() {
        return histogram.least();
    }

    /**
     * The greatest answer drawn.
     *
     * @return the value
     */
    public double greatest() {
        return histogram.greatest();
    }

    /**
     * The value at or below which a share of the draws with an answer lies.
     *
     * @param share between 0 and 1
     * @return to within 1/4096 of the range of the pilot run
     * @throws OutOfRangeException if the share is not between 0 and 1
     */
    public double quantile(double share) {
        return histogram.quantile(Probability.require("share", share));
    }

    /**
     * The share of the draws with an answer that lie at or below a value.
     *
     * @param value in the coherent SI unit of the result
     * @return from 0 to 1
     * @throws OutOfRangeException if the value is not a number
     */
    public double shareUpTo(double value) {
        if (Double.isNaN(value)) {
            throw new OutOfRangeException("value to compare with", "NaN", "a number", "check the value");
        }
        return histogram.shareUpTo(value);
    }

    /**
     * For each input the part of the variance that goes if it were known exactly: first-order sensitivity index, from the first 16384
     * draws. The parts add up to less than 1 where inputs act together; they are known to about 0.01.
     *
     * @return from 0 to 1 each, in the order of the inputs
     */
    public List<Double> shares() {
        return Arrays.stream(shares).boxed().toList();
    }

    /**
     * Where the calculation comes from.
     *
     * @return its source
     */
    public Source source() {
        return Gum.MONTE_CARLO;
    }
}
