package org.ullage.selection;

import java.util.List;
import java.util.function.ToLongFunction;

/** The candidates of a problem as columns, each divided by its greatest common divisor: a bound may then be rounded up to a whole number. */
final class Scaled {

    final long[] volumes;
    final long required;
    final long[][] costs;
    final long[] loads;
    final long footprintLimit;
    final long loadLimit;

    /** Objectives in the order in which they decide; the columns of costs have the same order. */
    private final List<Objective> order;

    private final boolean footprintLimited;
    private final boolean loadLimited;

    Scaled(List<Candidate> candidates, Problem problem) {
        order = problem.order();
        footprintLimited = problem.footprintLimit() != Problem.NO_LIMIT;
        loadLimited = problem.loadLimit() != Problem.NO_LIMIT;
        volumes = column(candidates, Candidate::volume);
        long unit = divide(volumes);
        required = -Math.floorDiv(-problem.required(), unit);
        costs = new long[order.size()][];
        long footprintUnit = 1;
        for (int i = 0; i < costs.length; i++) {
            Objective objective = order.get(i);
            costs[i] = column(candidates, candidate -> candidate.cost(objective));
            long divisor = divide(costs[i]);
            if (objective == Objective.SMALLEST_FOOTPRINT) {
                footprintUnit = divisor;
            }
        }
        footprintLimit = Math.floorDiv(problem.footprintLimit(), footprintUnit);
        loads = column(candidates, Candidate::load);
        loadLimit = Math.floorDiv(problem.loadLimit(), divide(loads));
    }

    boolean footprintLimited() {
        return footprintLimited;
    }

    boolean loadLimited() {
        return loadLimited;
    }

    int footprintPlace() {
        return order.indexOf(Objective.SMALLEST_FOOTPRINT);
    }

    private static long[] column(List<Candidate> candidates, ToLongFunction<Candidate> number) {
        return candidates.stream().mapToLong(number).toArray();
    }

    /** Divides a column by its greatest common divisor, which is returned; 1 for a column of zeros. */
    private static long divide(long[] column) {
        long divisor = 0;
        for (long number : column) {
            divisor = commonDivisor(number, divisor);
        }
        if (divisor <= 1) {
            return 1;
        }
        for (int i = 0; i < column.length; i++) {
            column[i] /= divisor;
        }
        return divisor;
    }

    private static long commonDivisor(long one, long other) {
        long a = one;
        long b = other;
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }
}
