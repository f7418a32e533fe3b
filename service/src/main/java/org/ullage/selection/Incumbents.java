package org.ullage.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The best one or two combinations found so far, and the costs that a better one must be below. */
final class Incumbents {

    private final int most;
    private final List<long[]> costs = new ArrayList<>();
    private final List<int[]> combinations = new ArrayList<>();

    /** Costs, first decides first, that a combination must be below to be of interest; null as long as every one is. */
    private long @Nullable [] mark;

    Incumbents(int most) {
        this.most = most;
    }

    /** Takes a combination in if it is better than the worst that is kept; of equals the first stays. */
    void offer(long[] sums, int[] chosen, int vessels) {
        if (mark != null && Arrays.compare(sums, mark) >= 0) {
            return;
        }
        int place = costs.size();
        while (place > 0 && Arrays.compare(sums, costs.get(place - 1)) < 0) {
            place--;
        }
        costs.add(place, sums.clone());
        combinations.add(place, Arrays.copyOf(chosen, vessels));
        if (costs.size() > most) {
            costs.remove(most);
            combinations.remove(most);
        }
        if (costs.size() == most) {
            mark = costs.get(most - 1);
        }
    }

    /**
     * Forgets the combinations but keeps their costs as the mark, raised so that these combinations are taken in when they are met
     * again in their place.
     */
    void keepCostsOnly() {
        if (mark != null) {
            mark = mark.clone();
            mark[mark.length - 1]++;
        }
        costs.clear();
        combinations.clear();
    }

    /** Compares a lower bound of one cost with the mark: negative if it is below. */
    int compare(int objective, long bound) {
        return mark == null ? -1 : Long.compare(bound, mark[objective]);
    }

    /** The first cost that must not be passed. */
    long firstMark() {
        return mark == null ? Long.MAX_VALUE : mark[0];
    }

    /** The combinations, best first. */
    List<int[]> combinations() {
        return combinations;
    }
}
