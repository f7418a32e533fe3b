package org.ullage.uncertainty;

import java.util.List;

/**
 * The part of the variance that goes if one input were known exactly, on average: the first-order sensitivity index Var(E[y|x]) /
 * Var(y), for each input. The draws are sorted into strata of the input; the variance of the means of the strata, less what chance
 * alone makes of it, is the share. It sees bent and non-monotone effects too, which squared correlations do not.
 */
final class FirstOrderShares {

    /** Over the width of an input: the straight part of its effect loses less than 0.2 %. */
    private static final int STRATA = 64;

    private final double[] low;
    private final double[] scale;
    private final double[][] sums;
    private final int[][] counts;
    private final Moments moments = new Moments();
    private double first;

    FirstOrderShares(List<ModelInput> inputs) {
        int size = inputs.size();
        low = new double[size];
        scale = new double[size];
        sums = new double[size][STRATA];
        counts = new int[size][STRATA];
        for (int i = 0; i < size; i++) {
            Spread spread = inputs.get(i).spread();
            low[i] = spread.lowest();
            scale[i] = spread.isCertain() ? 0 : STRATA / (spread.highest() - spread.lowest());
        }
    }

    void add(double[] inputs, double value) {
        if (moments.count() == 0) {
            first = value;
        }
        moments.add(value);
        for (int i = 0; i < inputs.length; i++) {
            int place = (int) ((inputs[i] - low[i]) * scale[i]);
            int stratum = Math.max(0, Math.min(STRATA - 1, place));
            sums[i][stratum] += value - first;
            counts[i][stratum]++;
        }
    }

    double[] shares() {
        double[] shares = new double[sums.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = scale[i] == 0 || moments.variance() == 0 ? 0 : share(sums[i], counts[i]);
        }
        return shares;
    }

    private double share(double[] sum, int[] count) {
        double mean = moments.mean() - first;
        double between = 0;
        int filled = 0;
        for (int stratum = 0; stratum < STRATA; stratum++) {
            if (count[stratum] > 0) {
                double beyond = sum[stratum] / count[stratum] - mean;
                between += count[stratum] * beyond * beyond;
                filled++;
            }
        }
        long n = moments.count();
        double all = moments.variance() * (n - 1);
        double within = Math.max(0, all - between) / Math.max(1, n - filled);
        return Math.max(0, Math.min(1, (between - (filled - 1) * within) / all));
    }
}
