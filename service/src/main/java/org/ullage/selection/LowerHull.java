package org.ullage.selection;

import java.util.Arrays;

/**
 * The least a cost can come to when a volume is still to be reached with a number of vessels: the lower convex hull of the points
 * (volume, cost) of the candidates and the origin. k vessels that reach a volume R cost at least k times the hull at R/k, because the
 * mean of k points lies on or above the hull.
 *
 * <p>There is a hull for the candidates from each place onwards, all kept in one tree: the hull from a place is the chain of vertices
 * below its top.
 */
final class LowerHull {

    private static final int ORIGIN = -1;

    /** Lowers a bound by more than the rounding of its few operations, so that it stays a bound. */
    private static final double ROUNDING = 1e-12;

    private final long[] volumes;
    private final long[] costs;
    private final int[] tops;
    private final int[] below;

    /** Of the edge that ends in a vertex. */
    private final double[] slopes;

    /**
     * @param volumes falling, above zero
     * @param costs zero or more
     */
    LowerHull(long[] volumes, long[] costs) {
        this.volumes = volumes;
        this.costs = costs;
        int n = volumes.length;
        tops = new int[n];
        below = new int[n];
        slopes = new double[n];
        Arrays.fill(below, ORIGIN);
        int top = ORIGIN;
        for (int i = n - 1; i >= 0; i--) {
            if (top == ORIGIN || volumes[i] > volumes[top] || costs[i] < costs[top]) {
                below[i] = firstBelow(i, top);
                slopes[i] = slope(below[i], i);
                top = i;
            }
            tops[i] = top;
        }
    }

    /** The vertex that stays below a new rightmost point: those that would be above the new edge fall out. */
    private int firstBelow(int point, int top) {
        int vertex = top;
        while (vertex != ORIGIN && (volumes[vertex] == volumes[point] || slopes[vertex] >= slope(vertex, point))) {
            vertex = below[vertex];
        }
        return vertex;
    }

    private double slope(int from, int to) {
        long volume = from == ORIGIN ? 0 : volumes[from];
        long cost = from == ORIGIN ? 0 : costs[from];
        return (double) (costs[to] - cost) / (volumes[to] - volume);
    }

    /**
     * The least cost of reaching a volume.
     *
     * @param from first candidate that may be used
     * @param vessels how many there may be; that many of the first candidate reach the volume
     * @param volume to be reached
     * @return a lower bound, as a whole number
     */
    long leastCost(int from, int vessels, long volume) {
        int upper = tops[from];
        int lower = below[upper];
        while (lower != ORIGIN && volumes[lower] * vessels >= volume) {
            upper = lower;
            lower = below[upper];
        }
        double least = lower == ORIGIN
                ? volume * slopes[upper]
                : vessels * (double) costs[lower] + (volume - vessels * volumes[lower]) * slopes[upper];
        return (long) Math.ceil(least * (1 - ROUNDING));
    }
}
