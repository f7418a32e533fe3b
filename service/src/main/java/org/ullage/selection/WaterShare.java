package org.ullage.selection;

import java.util.Comparator;
import java.util.List;

/**
 * How full vessels with equal charge stand next to each other: all to the same share s of their nominal volumes, except those whose
 * acceptance limit comes first, sum min(V_a, s V) = V_x.
 */
final class WaterShare {

    private WaterShare() {}

    /**
     * The share.
     *
     * @param vessels the vessels
     * @param water V_x in m3
     * @return s, or infinity if the acceptance limits do not take so much water
     */
    static double of(List<CatalogueItem> vessels, double water) {
        double rest = water;
        double volume =
                vessels.stream().mapToDouble(item -> item.nominal().si()).sum();
        List<CatalogueItem> fullFirst = vessels.stream()
                .sorted(Comparator.comparingDouble(WaterShare::limit))
                .toList();
        for (CatalogueItem item : fullFirst) {
            if (rest <= volume * limit(item)) {
                return rest / volume;
            }
            rest -= item.acceptance().si();
            volume -= item.nominal().si();
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double limit(CatalogueItem item) {
        return item.acceptance().dividedBy(item.nominal());
    }
}
