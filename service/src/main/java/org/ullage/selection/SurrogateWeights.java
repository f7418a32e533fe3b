package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Looks for the weights that make a {@link Surrogate} strongest; its strength is concave in each of them. */
final class SurrogateWeights {

    /** Each step leaves two thirds of the interval. */
    private static final int STEPS = 20;

    /** How often each of two weights takes its turn. */
    private static final int TURNS = 3;

    /** Largest weight of a limit in all against the bound of the first cost. */
    private static final double LARGEST = 16;

    private final Scaled scaled;
    private final int most;
    private final double firstUnit;
    private final double footprintUnit;
    private final double loadUnit;

    private SurrogateWeights(Scaled scaled, int most) {
        this.scaled = scaled;
        this.most = most;
        long least = new LowerHull(scaled.volumes, scaled.costs[0]).leastCost(0, most, scaled.required);
        this.firstUnit = 1.0 / Math.max(1, least);
        this.footprintUnit = 1.0 / Math.max(1, scaled.footprintLimit);
        this.loadUnit = 1.0 / Math.max(1, scaled.loadLimit);
    }

    /**
     * The surrogates that help: one with the first cost if a limit is set, and one of the two limits alone if both are.
     *
     * @param scaled the candidates; as many as there may be of the first reach the volume
     * @param most most vessels
     */
    static List<Surrogate> strongest(Scaled scaled, int most) {
        List<Surrogate> found = new ArrayList<>();
        if (scaled.footprintLimited() || scaled.loadLimited()) {
            SurrogateWeights weights = new SurrogateWeights(scaled, most);
            found.add(weights.withFirstCost());
            if (scaled.footprintLimited() && scaled.loadLimited()) {
                found.add(weights.ofLimits());
            }
        }
        return found;
    }

    private Surrogate withFirstCost() {
        double footprint = 0;
        double load = 0;
        for (int turn = 0; turn < TURNS; turn++) {
            double fixedLoad = load;
            footprint = scaled.footprintLimited() ? best(LARGEST, x -> costly(x, fixedLoad)) : 0;
            double fixedFootprint = footprint;
            load = scaled.loadLimited() ? best(LARGEST, x -> costly(fixedFootprint, x)) : 0;
        }
        return costly(footprint, load);
    }

    private Surrogate costly(double footprint, double load) {
        return new Surrogate(scaled, firstUnit, footprint * footprintUnit, load * loadUnit);
    }

    private Surrogate ofLimits() {
        DoubleFunction<Surrogate> shared = x -> new Surrogate(scaled, 0, x * footprintUnit, (1 - x) * loadUnit);
        return shared.apply(best(1, shared));
    }

    private double best(double largest, DoubleFunction<Surrogate> made) {
        double from = 0;
        double to = largest;
        for (int step = 0; step < STEPS; step++) {
            double lower = (2 * from + to) / (1 + 2);
            double upper = (from + 2 * to) / (1 + 2);
            if (strength(made.apply(lower)) < strength(made.apply(upper))) {
                from = lower;
            } else {
                to = upper;
            }
        }
        return (from + to) / 2;
    }

    private double strength(Surrogate surrogate) {
        return surrogate.strength(most, scaled.required);
    }
}
