package org.ullage.selection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/** Gives up the limits of a job one at a time and solves what is then left. */
final class ShortageFinder {

    private final Catalogue catalogue;
    private final SelectionJob job;
    private final List<Relaxation> found = new ArrayList<>();

    ShortageFinder(Catalogue catalogue, SelectionJob job) {
        this.catalogue = catalogue;
        this.job = job;
    }

    List<Relaxation> relaxations() {
        Limits limits = job.limits();
        add(Limit.VESSELS, problem(limits.withMostVessels()).ordered(Objective.FEWEST));
        if (!limits.mixed()) {
            add(Limit.SAME_SIZE, problem(limits.withMixed(true)));
        }
        if (limits.footprint() != null) {
            add(Limit.FOOTPRINT, problem(limits.withFootprint(null)).ordered(Objective.SMALLEST_FOOTPRINT));
        }
        if (limits.load() != null) {
            add(Limit.LOAD, Problem.of(catalogue, job).leastLoad());
        }
        if (catalogue.items().stream().anyMatch(item -> item.stock() != null)) {
            add(Limit.STOCK, problem(limits.withoutStock()));
        }
        ratings();
        found.add(new Relaxation(Limit.VOLUME, job, mostVolume()));
        return found;
    }

    private void ratings() {
        Limits limits = job.limits();
        Requirement requirement = job.requirement();
        Length height = limits.height();
        if (height != null) {
            List<Length> taller = values(CatalogueItem::height, Comparator.naturalOrder());
            taller.removeIf(other -> other.si() <= height.si());
            addFirst(Limit.HEIGHT, taller, most -> job.with(limits.withHeight(most)));
        }
        GaugePressure rating = requirement.rating();
        if (rating != null) {
            List<GaugePressure> lower = values(CatalogueItem::rating, Comparator.reverseOrder());
            lower.removeIf(other -> other.si() >= rating.si());
            addFirst(Limit.RATING, lower, least -> job.with(requirement.withRating(least)));
        }
        Temperature temperature = requirement.temperature();
        if (temperature != null) {
            List<Temperature> cooler = values(CatalogueItem::highestTemperature, Comparator.reverseOrder());
            cooler.removeIf(other -> other.si() >= temperature.si());
            addFirst(Limit.TEMPERATURE, cooler, least -> job.with(requirement.withTemperature(least)));
        }
        Set<VesselKind> closed = EnumSet.complementOf(EnumSet.of(VesselKind.OPEN));
        if (!requirement.kinds().containsAll(closed) && !requirement.kinds().contains(VesselKind.OPEN)) {
            add(Limit.KIND, Problem.of(catalogue, job.with(requirement.withKinds(closed))));
        }
    }

    private <T> List<T> values(Function<CatalogueItem, T> value, Comparator<T> order) {
        return new ArrayList<>(
                catalogue.items().stream().map(value).distinct().sorted(order).toList());
    }

    private Problem problem(Limits limits) {
        return Problem.of(catalogue, job.with(limits));
    }

    private void add(Limit limit, Problem relaxed) {
        found.add(new Relaxation(limit, job, combination(BranchAndBound.best(relaxed))));
    }

    /** The first value with which the job can be done; each allows whatever the ones before it allow. */
    private <T> void addFirst(Limit limit, List<T> values, Function<T, SelectionJob> relaxed) {
        Combination first = null;
        int from = 0;
        int to = values.size();
        while (from < to) {
            int middle = (from + to) / 2;
            Problem problem = Problem.of(catalogue, relaxed.apply(values.get(middle)));
            Combination combination = combination(BranchAndBound.best(problem));
            if (combination == null) {
                from = middle + 1;
            } else {
                first = combination;
                to = middle;
            }
        }
        found.add(new Relaxation(limit, job, first));
    }

    /** The combination that counts with most volume, found by halving what may be required. */
    private @Nullable Combination mostVolume() {
        CountedVolume counted = CountedVolume.of(job.requirement());
        Problem problem = Problem.of(catalogue, job)
                .ordered(job.limits().footprint() == null ? Objective.FEWEST : Objective.SMALLEST_FOOTPRINT);
        Combination most = null;
        long within = 0;
        long beyond = problem.required();
        while (beyond - within > 1) {
            long middle = within + (beyond - within) / 2;
            Combination combination = combination(BranchAndBound.best(problem.requiring(middle)));
            if (combination == null) {
                beyond = middle;
            } else {
                most = combination;
                within = counted.of(combination);
            }
        }
        return most;
    }

    private @Nullable Combination combination(int @Nullable [] places) {
        return places == null ? null : Combination.of(catalogue, places);
    }
}
