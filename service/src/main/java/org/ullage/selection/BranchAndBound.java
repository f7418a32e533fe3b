package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * The exact search. It walks through the combinations without a superfluous vessel, the vessels of each from the one that counts with
 * most volume down, and turns back where the costs so far and {@link LowerHull}'s bounds for the rest show that nothing better can
 * follow. Of combinations with equal costs the one that is met first wins.
 */
final class BranchAndBound {

    private final List<Candidate> candidates;
    /** Some seconds of search; an ordinary choice visits some tens. */
    private static final long MOST_VISITED = 50_000_000;

    private final Scaled scaled;
    private final int most;
    private final boolean mixed;
    private final LowerHull[] hulls;
    private final @Nullable LowerHull loadHull;
    private final int footprint;
    private List<Surrogate> surrogates = List.of();
    private final Incumbents incumbents;

    /** By number of vessels chosen so far: which, and what they cost and load. */
    private final int[] chosen;

    private final long[][] sums;
    private final long[] loads;
    private final long[][] weighted;
    private long visited;

    private BranchAndBound(Problem problem, int combinations) {
        most = problem.most();
        mixed = problem.mixed();
        candidates = mixed ? Dominance.needed(problem.candidates(), most, combinations) : problem.candidates();
        scaled = new Scaled(candidates, problem);
        hulls = new LowerHull[scaled.costs.length];
        for (int i = 0; i < hulls.length; i++) {
            hulls[i] = new LowerHull(scaled.volumes, scaled.costs[i]);
        }
        loadHull = scaled.loadLimited() ? new LowerHull(scaled.volumes, scaled.loads) : null;
        footprint = scaled.footprintPlace();
        incumbents = new Incumbents(combinations);
        chosen = new int[most];
        sums = new long[most + 1][hulls.length];
        loads = new long[most + 1];
        weighted = new long[most + 1][2];
    }

    /** Places in the catalogue of the best combination, largest vessel first, or null if none is feasible. */
    static int @Nullable [] best(Problem problem) {
        List<int[]> found = best(problem, 1);
        return found.isEmpty() ? null : found.get(0);
    }

    /** The best and the best but one, as far as there are any. */
    static List<int[]> bestTwo(Problem problem) {
        return best(problem, 2);
    }

    private static List<int[]> best(Problem problem, int combinations) {
        if (problem.candidates().isEmpty()) {
            return List.of();
        }
        BranchAndBound search = new BranchAndBound(problem, combinations);
        search.run();
        return search.inCatalogue();
    }

    private void run() {
        sameSizes();
        if (mixed && scaled.volumes[0] * most >= scaled.required) {
            surrogates = SurrogateWeights.strongest(scaled, most);
            incumbents.keepCostsOnly();
            search(0, 0, scaled.required);
        }
    }

    /** The combinations of one item each: all there is to choose from if sizes are not mixed, a first mark for the search if they are. */
    private void sameSizes() {
        for (int i = 0; i < candidates.size(); i++) {
            long count = -Math.floorDiv(-scaled.required, scaled.volumes[i]);
            if (count <= Math.min(most, candidates.get(i).stock())) {
                int depth = 0;
                while (depth < count) {
                    choose(i, depth++);
                }
                if (isWithinLimits(depth)) {
                    incumbents.offer(sums[depth], chosen, depth);
                }
            }
        }
    }

    private void search(int from, int depth, long remaining) {
        int left = most - depth;
        for (int i = from; i < candidates.size() && scaled.volumes[i] * left >= remaining; i++) {
            long rest = remaining - scaled.volumes[i];
            if (scaled.volumes[i] * (left - 1) < rest || isTooDear(i, depth, rest) || isUsedUp(i, depth)) {
                continue;
            }
            requireWorthwhile();
            choose(i, depth);
            if (!isWithinLimits(depth + 1)) {
                continue;
            }
            if (rest <= 0) {
                incumbents.offer(sums[depth + 1], chosen, depth + 1);
            } else if (mayLeadToBetter(i, depth + 1, rest)) {
                search(i, depth + 1, rest);
            }
        }
    }

    /** Better no answer than none for hours, or one that is not the best. */
    private void requireWorthwhile() {
        if (++visited > MOST_VISITED) {
            throw new OutOfRangeException(
                    "search for the best vessels",
                    "over " + MOST_VISITED + " combinations looked at",
                    "decided by then",
                    "leave out items that differ little, allow fewer vessels, or loosen the limit on footprint or load");
        }
    }

    /** By the first objective alone, before anything is added up: what most candidates fail by. */
    private boolean isTooDear(int candidate, int depth, long rest) {
        long cost = sums[depth][0] + scaled.costs[0][candidate];
        long mark = incumbents.firstMark();
        return cost > mark || (rest > 0 && cost + hulls[0].leastCost(candidate, most - depth - 1, rest) > mark);
    }

    private boolean isUsedUp(int candidate, int depth) {
        int stock = candidates.get(candidate).stock();
        return depth >= stock && chosen[depth - stock] == candidate;
    }

    private void choose(int candidate, int depth) {
        chosen[depth] = candidate;
        for (int o = 0; o < hulls.length; o++) {
            sums[depth + 1][o] = sums[depth][o] + scaled.costs[o][candidate];
        }
        loads[depth + 1] = loads[depth] + scaled.loads[candidate];
        for (int s = 0; s < surrogates.size(); s++) {
            weighted[depth + 1][s] = weighted[depth][s] + surrogates.get(s).of(candidate);
        }
    }

    private boolean isWithinLimits(int depth) {
        return sums[depth][footprint] <= scaled.footprintLimit && loads[depth] <= scaled.loadLimit;
    }

    private boolean mayLeadToBetter(int from, int depth, long rest) {
        int left = most - depth;
        if (scaled.footprintLimited()
                && sums[depth][footprint] + hulls[footprint].leastCost(from, left, rest) > scaled.footprintLimit) {
            return false;
        }
        if (loadHull != null && loads[depth] + loadHull.leastCost(from, left, rest) > scaled.loadLimit) {
            return false;
        }
        for (int s = 0; s < surrogates.size(); s++) {
            if (surrogates.get(s).excludes(weighted[depth][s], from, left, rest, incumbents.firstMark())) {
                return false;
            }
        }
        for (int o = 0; o < hulls.length; o++) {
            int comparison = incumbents.compare(o, sums[depth][o] + hulls[o].leastCost(from, left, rest));
            if (comparison != 0) {
                return comparison < 0;
            }
        }
        return false;
    }

    private List<int[]> inCatalogue() {
        List<int[]> places = new ArrayList<>();
        for (int[] combination : incumbents.combinations()) {
            int[] items = new int[combination.length];
            for (int i = 0; i < items.length; i++) {
                items[i] = candidates.get(combination[i]).item();
            }
            places.add(items);
        }
        return places;
    }
}
