package org.ullage.fluids;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Where a continuous function crosses zero, by Brent's method. */
final class Root {

    /** Of percentages and kelvins; far below anything a density notices. */
    private static final double ACCURACY = 1e-10;

    private static final int MOST_STEPS = 200;

    private Root() {}

    /** @param function of opposite sign at the two ends, or zero at one */
    static double of(UnivariateFunction function, double low, double high) {
        return new BrentSolver(ACCURACY).solve(MOST_STEPS, function, low, high);
    }
}
