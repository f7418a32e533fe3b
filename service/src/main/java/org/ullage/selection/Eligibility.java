package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;

/** Which items of a catalogue may be used for a job at all, each looked at alone. */
final class Eligibility {

    private Eligibility() {}

    static boolean allows(SelectionJob job, CatalogueItem item) {
        return isAllowedKind(job, item)
                && standsPressure(job, item)
                && standsTemperature(job, item)
                && isLowEnough(job, item)
                && isInStock(job, item);
    }

    /** The items that may not be used, each with every reason. */
    static List<Excluded> excluded(Catalogue catalogue, SelectionJob job) {
        return catalogue.items().stream()
                .filter(item -> !allows(job, item))
                .map(item -> new Excluded(item, String.join("; ", reasons(job, item))))
                .toList();
    }

    private static List<String> reasons(SelectionJob job, CatalogueItem item) {
        List<String> reasons = new ArrayList<>();
        if (!isAllowedKind(job, item)) {
            reasons.add("kind " + item.kind().word() + " is not among those asked for");
        }
        GaugePressure rating = job.requirement().rating();
        if (rating != null && !standsPressure(job, item)) {
            reasons.add("rated for " + item.rating().textInBothSystems() + ", asked for " + rating.textInBothSystems());
        }
        Temperature temperature = job.requirement().temperature();
        if (temperature != null && !standsTemperature(job, item)) {
            reasons.add("stands " + item.highestTemperature().textInBothSystems() + ", asked for "
                    + temperature.textInBothSystems());
        }
        Length height = job.limits().height();
        if (height != null && !isLowEnough(job, item)) {
            reasons.add(item.height().textInBothSystems() + " tall, there is " + height.textInBothSystems());
        }
        if (!isInStock(job, item)) {
            reasons.add("none in stock");
        }
        return reasons;
    }

    private static boolean isAllowedKind(SelectionJob job, CatalogueItem item) {
        return job.requirement().kinds().contains(item.kind());
    }

    private static boolean standsPressure(SelectionJob job, CatalogueItem item) {
        @Nullable GaugePressure least = job.requirement().rating();
        return least == null || item.rating().si() >= least.si();
    }

    private static boolean standsTemperature(SelectionJob job, CatalogueItem item) {
        @Nullable Temperature least = job.requirement().temperature();
        return least == null || item.highestTemperature().si() >= least.si();
    }

    private static boolean isLowEnough(SelectionJob job, CatalogueItem item) {
        @Nullable Length most = job.limits().height();
        return most == null || item.height().si() <= most.si();
    }

    private static boolean isInStock(SelectionJob job, CatalogueItem item) {
        @Nullable Integer stock = item.stock();
        return !job.limits().countStock() || stock == null || stock > 0;
    }
}
