package org.ullage.uncertainty;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * The law of propagation of uncertainty (JCGM 100:2008, 5.1.2, with correlation 5.2.2): u^2 = sum over i and j of c_i u_i c_j u_j r_ij.
 * The model is taken at the means; the products c_i u_i are half of what the result moves when an input moves from one standard
 * uncertainty below its mean to one above. Right where the model is nearly straight over that range; {@link MonteCarlo} otherwise.
 */
public final class LinearPropagation {

    private LinearPropagation() {}

    /**
     * Independent inputs.
     *
     * @param model the wanted value
     * @param inputs its inputs in order
     * @return the value with its standard uncertainty
     * @throws OutOfRangeException if the model has no answer at the means or a standard uncertainty from them
     */
    public static LinearUncertainty of(ModelFunction model, List<ModelInput> inputs) {
        double[] contributions = contributions(model, inputs);
        double[] variances = new double[contributions.length];
        for (int i = 0; i < variances.length; i++) {
            variances[i] = contributions[i] * contributions[i];
        }
        return result(model, inputs, contributions, variances, degreesOfFreedom(inputs, contributions));
    }

    /**
     * Correlated inputs. There are no effective degrees of freedom then, because their formula is for independent inputs.
     *
     * @param model the wanted value
     * @param inputs its inputs in order, without degrees of freedom
     * @param correlation their coefficients
     * @return the value with its standard uncertainty
     * @throws OutOfRangeException if the model has no answer at the means or a standard uncertainty from them, the sizes differ or
     *     degrees of freedom were given
     */
    public static LinearUncertainty of(ModelFunction model, List<ModelInput> inputs, Correlation correlation) {
        requireSame(inputs, correlation);
        double[] contributions = contributions(model, inputs);
        double[] variances = new double[contributions.length];
        for (int i = 0; i < variances.length; i++) {
            for (int j = 0; j < variances.length; j++) {
                variances[i] += contributions[i] * contributions[j] * correlation.coefficient(i, j);
            }
        }
        return result(model, inputs, contributions, variances, null);
    }

    private static void requireSame(List<ModelInput> inputs, Correlation correlation) {
        if (inputs.size() != correlation.size()) {
            throw new OutOfRangeException(
                    "size of the correlation",
                    String.valueOf(correlation.size()),
                    "the number of inputs, " + inputs.size(),
                    "give a row and a column for each input");
        }
        for (ModelInput input : inputs) {
            if (input.degreesOfFreedom() != null) {
                throw new OutOfRangeException(
                        "degrees of freedom of the " + input.name(),
                        String.valueOf(input.degreesOfFreedom()),
                        "left out where inputs are correlated",
                        "the effective degrees of freedom are defined for independent inputs");
            }
        }
    }

    private static double[] means(List<ModelInput> inputs) {
        return inputs.stream().mapToDouble(input -> input.spread().mean()).toArray();
    }

    private static double[] contributions(ModelFunction model, List<ModelInput> inputs) {
        double[] contributions = new double[inputs.size()];
        for (int i = 0; i < contributions.length; i++) {
            Spread spread = inputs.get(i).spread();
            if (!spread.isCertain()) {
                double u = spread.standardUncertainty();
                contributions[i] = (moved(model, inputs, i, u) - moved(model, inputs, i, -u)) / 2;
            }
        }
        return contributions;
    }

    private static double moved(ModelFunction model, List<ModelInput> inputs, int i, double by) {
        double[] values = means(inputs);
        values[i] += by;
        try {
            return requireAnswer(model.value(values), inputs.get(i).name());
        } catch (OutOfRangeException refused) {
            OutOfRangeException tooWide = new OutOfRangeException(
                    "spread of the " + inputs.get(i).name(),
                    "with one standard uncertainty either way",
                    "so small that there is an answer there (" + refused.getMessage() + ")",
                    "narrow it, or draw instead");
            tooWide.initCause(refused);
            throw tooWide;
        }
    }

    private static double requireAnswer(double value, String at) {
        if (!Double.isFinite(value)) {
            throw new OutOfRangeException("result", String.valueOf(value), "finite", "check the " + at);
        }
        return value;
    }

    private static LinearUncertainty result(
            ModelFunction model,
            List<ModelInput> inputs,
            double[] contributions,
            double[] variances,
            @Nullable Double degreesOfFreedom) {
        double value = requireAnswer(model.value(means(inputs)), "means of the inputs");
        double variance = 0;
        for (double part : variances) {
            variance += part;
        }
        // full correlation may cancel everything but a rounding below zero
        variance = requireAnswer(Math.max(0, variance), "spreads of the inputs");
        List<Contribution> parts = new ArrayList<>();
        for (int i = 0; i < contributions.length; i++) {
            Spread spread = inputs.get(i).spread();
            double sensitivity = spread.isCertain() ? 0 : contributions[i] / spread.standardUncertainty();
            double share = variance == 0 ? 0 : variances[i] / variance;
            parts.add(new Contribution(inputs.get(i).name(), sensitivity, contributions[i], share));
        }
        return new LinearUncertainty(value, Math.sqrt(variance), parts, degreesOfFreedom);
    }

    /** Welch and Satterthwaite (JCGM 100:2008, G.4.1): nu = u^4 / sum of u_i^4 / nu_i; null if no u_i limits it. */
    private static @Nullable Double degreesOfFreedom(List<ModelInput> inputs, double[] contributions) {
        double variance = 0;
        double sum = 0;
        for (int i = 0; i < contributions.length; i++) {
            double square = contributions[i] * contributions[i];
            variance += square;
            Double own = inputs.get(i).degreesOfFreedom();
            sum += own == null ? 0 : square * square / own;
        }
        return sum == 0 ? null : variance * variance / sum;
    }
}
