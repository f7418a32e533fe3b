package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out candidates that others replace without loss, so that neither the best combination nor the runner-up changes.
 *
 * <p>A vessel X of a combination can be exchanged for one that counts with at least as much volume for at most the cost and load and
 * stands before it in the order of the search: the combination gets better, or stays as good and wins the tie. The other vessels of the
 * combination use up at most N - 1 pieces of what replaces X. So X is not needed for the best one if there are N pieces of that, and
 * not for the runner-up either if N pieces are left without the best-stocked item: then two different exchanges both give a better
 * combination. (They stay different when vessels that have become superfluous are taken out, because without the exchanged vessel the
 * volume is not enough.)
 */
final class Dominance {

    private Dominance() {}

    /** The candidates needed to find the best combinations, in their order. */
    static List<Candidate> needed(List<Candidate> candidates, int most, int combinations) {
        List<Candidate> kept = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (!isReplaced(candidate, kept, most, combinations)) {
                kept.add(candidate);
            }
        }
        return kept;
    }

    private static boolean isReplaced(Candidate candidate, List<Candidate> before, int most, int combinations) {
        int pieces = 0;
        int largestStock = 0;
        for (Candidate other : before) {
            if (other.replaces(candidate)) {
                pieces += Math.min(other.stock(), most);
                largestStock = Math.max(largestStock, Math.min(other.stock(), most));
                if (pieces - (combinations - 1) * largestStock >= most) {
                    return true;
                }
            }
        }
        return false;
    }
}
