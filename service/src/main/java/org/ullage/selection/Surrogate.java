package org.ullage.selection;

/**
 * A bound on several sums at once, for jobs with tight limits. Whatever keeps footprint and load within their limits F and M and its
 * first cost at or below C also keeps the weighted sum of the three at or below the weighted sum of F, M and C, and {@link LowerHull}
 * bounds that sum from below. It sees what no bound on a single sum does: that what is cheap may not be small.
 */
final class Surrogate {

    /** Weighted sums are whole numbers of small parts, so that they add up without rounding. */
    private static final double PARTS = 1e12;

    /** A candidate that weighs more counts as if it weighed this, which is still a bound and cannot overflow. */
    private static final double HEAVIEST = 1e17;

    /** Room for the rounding of the few operations on weights. */
    private static final double ROUNDING = 1e-12;

    private final double firstWeight;
    private final double limits;
    private final long[] weighted;
    private final LowerHull hull;

    /**
     * @param scaled the candidates
     * @param first weight of the first cost
     * @param footprint weight of the footprint, 0 if it is not limited
     * @param load weight of the load, 0 if it is not limited
     */
    Surrogate(Scaled scaled, double first, double footprint, double load) {
        long[] costs = scaled.costs[0];
        long[] footprints = scaled.costs[scaled.footprintPlace()];
        firstWeight = first;
        limits = (footprint == 0 ? 0 : footprint * scaled.footprintLimit) + (load == 0 ? 0 : load * scaled.loadLimit);
        weighted = new long[costs.length];
        for (int i = 0; i < weighted.length; i++) {
            double sum = first * costs[i] + footprint * footprints[i] + load * scaled.loads[i];
            weighted[i] = (long) Math.floor(Math.min(HEAVIEST, PARTS * sum * (1 - ROUNDING)));
        }
        hull = new LowerHull(scaled.volumes, weighted);
    }

    /** What a candidate adds to the weighted sum. */
    long of(int candidate) {
        return weighted[candidate];
    }

    /** How high it bounds the weighted first cost of the whole job: the higher, the better the weights. */
    double strength(int most, long required) {
        return hull.leastCost(0, most, required) - PARTS * limits;
    }

    /**
     * Whether nothing that follows can keep the limits with a first cost at or below a mark.
     *
     * @param sum weighted sum so far
     * @param from first candidate that may be used
     * @param vessels how many there may be; that many of the first candidate reach the volume
     * @param volume to be reached
     * @param mark the first cost that must not be passed
     */
    boolean excludes(long sum, int from, int vessels, long volume, long mark) {
        double most = PARTS * (firstWeight * mark + limits) * (1 + ROUNDING);
        return sum + hull.leastCost(from, vessels, volume) > most;
    }
}
