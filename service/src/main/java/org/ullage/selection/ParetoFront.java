package org.ullage.selection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.TextTable;

/**
 * The combinations of which none is beaten by another one in price, footprint and number of vessels: at least as good in all three and
 * better in one. Of several with the same three numbers the lightest stands for all. Immutable.
 *
 * @param combinations cheapest first, then the one with the fewest vessels
 */
public record ParetoFront(List<Combination> combinations) implements Serializable {

    /**
     * Copies the list.
     *
     * @param combinations cheapest first
     */
    public ParetoFront {
        combinations = List.copyOf(combinations);
    }

    /**
     * For each number of vessels: the cheapest, then the cheapest with less footprint, and so on until there is none. What was not
     * found with fewer vessels is new on the front.
     */
    static ParetoFront of(Catalogue catalogue, SelectionJob job) {
        Problem problem = Problem.of(catalogue, job)
                .ordered(Objective.CHEAPEST, Objective.SMALLEST_FOOTPRINT, Objective.FEWEST, Objective.LIGHTEST);
        List<Combination> front = new ArrayList<>();
        for (int most = 1; most <= job.limits().vessels(); most++) {
            Problem next = problem.atMost(most);
            int[] best = BranchAndBound.best(next);
            while (best != null) {
                Combination combination = Combination.of(catalogue, best);
                if (best.length == most) {
                    front.add(combination);
                }
                next = next.withinFootprint(Objective.SMALLEST_FOOTPRINT.exact(combination) - 1);
                best = BranchAndBound.best(next);
            }
        }
        front.sort(Comparator.comparing(Combination::price).thenComparing(Combination::vessels));
        return new ParetoFront(front);
    }

    /**
     * The front as a table.
     *
     * @param system metric or inch-pound
     * @return a line for the header and each combination, each ended by a line feed
     */
    public String text(UnitSystem system) {
        TextTable table = new TextTable(List.of("price", "footprint", "vessels", "nominal", "combination"));
        combinations.forEach(combination -> table.add(List.of(
                combination.price().toPlainString(),
                combination.footprint().text(system),
                String.valueOf(combination.vessels()),
                combination.nominal().text(system),
                combination.toString())));
        return table.text();
    }
}
