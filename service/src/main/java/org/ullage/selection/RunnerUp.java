package org.ullage.selection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.UnitSystem;

/**
 * The best combination but one, and why it lost. Immutable.
 *
 * @param chosen the combination that won
 * @param combination the runner-up
 * @param decidedBy the first objective in which the two differ, or null if they are equal in all of them and the tie was broken by size
 */
public record RunnerUp(
        Combination chosen,
        Combination combination,
        @Nullable Objective decidedBy) implements Serializable {

    static RunnerUp of(SelectionJob job, Combination chosen, Combination second) {
        for (Objective objective : job.order()) {
            if (objective.exact(chosen) != objective.exact(second)) {
                return new RunnerUp(chosen, second, objective);
            }
        }
        return new RunnerUp(chosen, second, null);
    }

    /**
     * Why it lost, and by how much.
     *
     * @param system metric or inch-pound
     * @return such as {@code price 12.50 more}
     */
    public String reason(UnitSystem system) {
        return decidedBy == null
                ? "equal in every objective; the larger largest vessel, then the place in the catalogue decides"
                : decidedBy.word() + " " + decidedBy.excess(combination, chosen, system) + " more";
    }
}
