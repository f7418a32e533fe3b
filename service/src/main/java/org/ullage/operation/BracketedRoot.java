package org.ullage.operation;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;

/** Where a continuous function crosses zero between two ends, by bracketing with inverse interpolation. */
final class BracketedRoot {

    /** Relative, of an absolute pressure or temperature; far below what any gauge shows. */
    private static final double RELATIVE_ACCURACY = 1e-13;

    private static final double ABSOLUTE_ACCURACY = 1e-10;
    private static final int ORDER = 5;
    private static final int MOST_STEPS = 300;

    private BracketedRoot() {}

    /** @param function of opposite sign at the two ends, or zero at one */
    static double of(UnivariateFunction function, double low, double high) {
        try {
            return solved(function, low, high);
        } catch (NoBracketingException underflow) {
            // The solver tells the signs by a product, which is zero for values as small as their squares are denormal.
            double largest = Math.max(Math.abs(function.value(low)), Math.abs(function.value(high)));
            return solved(x -> function.value(x) / largest, low, high);
        }
    }

    private static double solved(UnivariateFunction function, double low, double high) {
        return new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, ABSOLUTE_ACCURACY, Double.MIN_VALUE, ORDER)
                .solve(MOST_STEPS, function, low, high);
    }

    /**
     * The first crossing on the way from one end to the other, in either direction.
     *
     * @param function not above zero at the start
     * @param points how many points are looked at on the way
     * @return the crossing; NaN if the function stays at or below zero
     */
    static double first(UnivariateFunction function, double from, double to, int points) {
        double previous = from;
        for (int i = 1; i <= points; i++) {
            double next = from + (to - from) * i / points;
            if (function.value(next) > 0) {
                return of(function, Math.min(previous, next), Math.max(previous, next));
            }
            previous = next;
        }
        return Double.NaN;
    }
}
