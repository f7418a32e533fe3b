package org.ullage.diagnosis;

import org.ullage.provenance.Constant;

/**
 * How much gas a hypothesis expects, as a share of what was charged: weights over one grid of shares that all hypotheses use. Bounds
 * are judgements and say what the words mean: low charge begins where a check would find it.
 */
final class GasPrior {

    /** The shares that are looked at: 1 % apart, up to three times the charge. */
    private static final int POINTS = 300;

    private static final Constant SPREAD_OF_A_SOUND_CHARGE = new Constant("s", 0.06, "1", LikelihoodTable.SOURCE);
    private static final Constant WATERLOGGED_UP_TO = new Constant("g", 0.1, "1", LikelihoodTable.SOURCE);
    private static final Constant LOW_UP_TO = new Constant("g", 0.9, "1", LikelihoodTable.SOURCE);
    private static final Constant OVER_FROM = new Constant("g", 1.12, "1", LikelihoodTable.SOURCE);
    private static final Constant OVER_FALLS_OFF_BY = new Constant("g", 0.15, "1", LikelihoodTable.SOURCE);
    private static final Constant AIR_UP_TO = new Constant("g", 2.5, "1", LikelihoodTable.SOURCE);

    private GasPrior() {}

    static int points() {
        return POINTS;
    }

    static double share(int point) {
        return (point + 1) / 100.0;
    }

    /** How far a sound charge strays, as a share. */
    static double spreadOfASoundCharge() {
        return SPREAD_OF_A_SOUND_CHARGE.value();
    }

    /** Weights that add up to one; for air in the loop, of the gas in vessel and loop together. */
    static double[] weights(Hypothesis hypothesis) {
        double[] weights = new double[POINTS];
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            weights[i] = density(hypothesis, share(i));
            sum += weights[i];
        }
        for (int i = 0; i < POINTS; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private static double density(Hypothesis hypothesis, double share) {
        return switch (hypothesis) {
            case WATERLOGGED -> within(share, 0, WATERLOGGED_UP_TO.value());
            case LOW_CHARGE -> within(share, WATERLOGGED_UP_TO.value(), LOW_UP_TO.value());
            case OVER_CHARGED -> falling(share - OVER_FROM.value());
            case AIR_IN_LOOP -> within(share, OVER_FROM.value(), AIR_UP_TO.value());
            default -> Densities.normal(share, 1, SPREAD_OF_A_SOUND_CHARGE.value());
        };
    }

    /** A little too much is common, twice as much is not. */
    private static double falling(double beyond) {
        return beyond > 0 ? Math.exp(-beyond / OVER_FALLS_OFF_BY.value()) : 0;
    }

    private static double within(double share, double low, double high) {
        return share > low && share <= high ? 1 : 0;
    }
}
