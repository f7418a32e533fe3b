package org.ullage.examples.compare;

import java.util.Map;
import org.ullage.comparison.Convention;
import org.ullage.comparison.ConventionShares;
import org.ullage.examples.size.FoundLoop;
import org.ullage.method.Method;
import org.ullage.quantity.Volume;

/**
 * What each convention is worth on the average over all orders of exchange, or why there is no such average.
 *
 * @param shares by convention; empty if there is no average
 * @param refusal why there is none, or empty
 */
record Average(Map<Convention, Volume> shares, String refusal) {

    static Average between(FoundLoop loop, Method first, Method second) {
        try {
            return new Average(
                    ConventionShares.between(loop.job(), first, second).shares(), "");
        } catch (IllegalArgumentException e) {
            return new Average(
                    Map.of(),
                    "there is no average over all orders, because some mixture of both methods refuses the loop: "
                            + e.getMessage());
        }
    }
}
