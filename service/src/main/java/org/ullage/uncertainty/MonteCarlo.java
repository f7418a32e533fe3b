package org.ullage.uncertainty;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ullage.quantity.OutOfRangeException;

/**
 * Propagation of distributions by drawing (JCGM 101:2008, clause 7): the inputs are drawn independently of each other, the model is
 * taken at each draw. Memory does not grow with the number of draws; the same seed gives the same bits, and draw n is the same however
 * many are asked for.
 */
public final class MonteCarlo {

    /** Fewer say nothing about a tail. */
    private static final int FEWEST = 1000;

    /** Counts stay within an int. */
    private static final int MOST = 1_000_000_000;

    private static final int PILOT_BLOCKS = 16;

    /** Draws of the pilot run, which finds the range of the result and the shares of the inputs. */
    private static final int PILOT = PILOT_BLOCKS * Draws.BLOCK;

    private final ModelFunction model;
    private final Draws draws;
    private final FirstOrderShares shares;
    private final Moments moments = new Moments();
    private final Map<String, Long> refusals = new TreeMap<>();

    private MonteCarlo(ModelFunction model, List<ModelInput> inputs, long seed) {
        this.model = model;
        this.draws = new Draws(inputs, seed);
        this.shares = new FirstOrderShares(inputs);
    }

    /**
     * Draws.
     *
     * @param model the wanted value
     * @param inputs its inputs in order; their degrees of freedom are not used
     * @param draws how many, from 1000 to 1e9; 1e6 usually give two digits of a 95 % interval
     * @param seed any number; stands in the result
     * @return the distribution of the wanted value
     * @throws OutOfRangeException if the number of draws is not allowed, or fewer than 2 of the first 16384 have an answer
     */
    public static MonteCarloResult of(ModelFunction model, List<ModelInput> inputs, int draws, long seed) {
        if (draws < FEWEST || draws > MOST) {
            throw new OutOfRangeException(
                    "number of draws", String.valueOf(draws), "from " + FEWEST + " to " + MOST, "100000 is usual");
        }
        return new MonteCarlo(model, inputs, seed).run(draws, seed, List.copyOf(inputs));
    }

    private MonteCarloResult run(int count, long seed, List<ModelInput> inputs) {
        double[] answers = pilot(Math.min(count, PILOT));
        moments.addFinite(answers, answers.length);
        Histogram histogram = histogram(answers);
        double[] block = new double[Draws.BLOCK];
        for (int done = PILOT; done < count; done += Draws.BLOCK) {
            draws.nextBlock();
            int size = Math.min(Draws.BLOCK, count - done);
            for (int i = 0; i < size; i++) {
                block[i] = answer(draws.row(i));
            }
            histogram.addFinite(block, size);
            moments.addFinite(block, size);
        }
        return new MonteCarloResult(
                inputs,
                seed,
                count,
                refusals,
                moments.mean(),
                Math.sqrt(moments.variance()),
                shares.shares(),
                histogram);
    }

    /** Runs the first blocks and returns their answers, NaN for a refusal. */
    private double[] pilot(int count) {
        double[] answers = new double[count];
        for (int i = 0; i < count; i++) {
            if (i % Draws.BLOCK == 0) {
                draws.nextBlock();
            }
            double[] row = draws.row(i % Draws.BLOCK);
            answers[i] = answer(row);
            if (Double.isFinite(answers[i])) {
                shares.add(row, answers[i]);
            }
        }
        return answers;
    }

    private Histogram histogram(double[] answers) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (double answer : answers) {
            if (Double.isFinite(answer)) {
                least = Math.min(least, answer);
                greatest = Math.max(greatest, answer);
            }
        }
        if (moments.count() < 2) {
            throw new OutOfRangeException(
                    "draws with an answer",
                    moments.count() + " of the first " + answers.length,
                    "2 or more",
                    "all were refused (" + String.join(", ", refusals.keySet()) + "): check the inputs and spreads");
        }
        Histogram histogram = new Histogram(least, greatest);
        histogram.addFinite(answers, answers.length);
        return histogram;
    }

    /** The model at a draw; what it refuses is counted by its reason. */
    private double answer(double[] row) {
        try {
            double answer = model.value(row);
            if (!Double.isFinite(answer)) {
                refusals.merge("no finite answer", 1L, Long::sum);
            }
            return answer;
        } catch (OutOfRangeException refusal) {
            refusals.merge(refusal.quantity(), 1L, Long::sum);
            return Double.NaN;
        }
    }
}
