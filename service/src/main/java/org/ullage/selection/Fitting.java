package org.ullage.selection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Mass;

/** Whether a combination keeps every limit of a job other than the required volumes. */
final class Fitting {

    private Fitting() {}

    static boolean fits(SelectionJob job, Combination combination) {
        Limits limits = job.limits();
        return combination.vessels() <= limits.vessels()
                && (limits.mixed() || combination.lines().size() == 1)
                && combination.lines().stream()
                        .allMatch(line -> Eligibility.allows(job, line.item()) && isInStock(limits, line))
                && fitsFootprint(limits.footprint(), combination)
                && fitsLoad(limits.load(), limits.fluid(), combination.items());
    }

    private static boolean isInStock(Limits limits, Combination.Line line) {
        @Nullable Integer stock = line.item().stock();
        return !limits.countStock() || stock == null || line.count() <= stock;
    }

    private static boolean fitsFootprint(@Nullable Area most, Combination combination) {
        return most == null || Objective.SMALLEST_FOOTPRINT.exact(combination) <= Exact.areaLimit(most.si());
    }

    private static boolean fitsLoad(@Nullable Mass most, @Nullable Density fluid, List<CatalogueItem> items) {
        return most == null
                || fluid == null
                || items.stream()
                                .mapToLong(item ->
                                        Exact.mass(item.waterloggedMass(fluid).si()))
                                .sum()
                        <= Exact.massLimit(most.si());
    }
}
