package org.ullage.selection;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ullage.quantity.Area;
import org.ullage.quantity.Mass;

/**
 * A job on a catalogue as whole numbers: choose how many of each so that what they count with reaches the requirement, within the
 * limits, with the least costs in their order.
 *
 * @param candidates the items that may be used, the one that counts with most volume first
 * @param required what the volumes must add up to
 * @param most most vessels
 * @param mixed whether different items may stand together
 * @param footprintLimit what the footprints may add up to
 * @param loadLimit what the loads may add up to
 * @param order objectives in the order in which they decide
 */
record Problem(
        List<Candidate> candidates,
        long required,
        int most,
        boolean mixed,
        long footprintLimit,
        long loadLimit,
        List<Objective> order) {

    static final long NO_LIMIT = Long.MAX_VALUE;

    static Problem of(Catalogue catalogue, SelectionJob job) {
        Limits limits = job.limits();
        CountedVolume counted = CountedVolume.of(job.requirement());
        Area area = limits.footprint();
        Mass load = limits.load();
        return new Problem(
                candidates(catalogue, job, counted),
                counted.required(),
                limits.vessels(),
                limits.mixed(),
                area == null ? NO_LIMIT : Exact.areaLimit(area.si()),
                load == null ? NO_LIMIT : Exact.massLimit(load.si()),
                job.order());
    }

    private static List<Candidate> candidates(Catalogue catalogue, SelectionJob job, CountedVolume counted) {
        return IntStream.range(0, catalogue.items().size())
                .filter(i -> Eligibility.allows(job, catalogue.items().get(i)))
                .mapToObj(i -> Candidate.of(catalogue, i, job.limits(), counted))
                .filter(candidate -> candidate.volume() > 0)
                .sorted(Comparator.comparingLong(candidate -> -candidate.volume()))
                .toList();
    }

    Problem ordered(Objective... first) {
        return new Problem(
                candidates, required, most, mixed, footprintLimit, loadLimit, Objective.completed(List.of(first)));
    }

    Problem atMost(int vessels) {
        return new Problem(candidates, required, vessels, mixed, footprintLimit, loadLimit, order);
    }

    Problem withinFootprint(long limit) {
        return new Problem(candidates, required, most, mixed, limit, loadLimit, order);
    }

    Problem requiring(long volume) {
        return new Problem(candidates, volume, most, mixed, footprintLimit, loadLimit, order);
    }

    /** The same without the limit on the load, which takes the place of the empty mass as what is to be least. */
    Problem leastLoad() {
        List<Candidate> weighed = candidates.stream()
                .map(one -> new Candidate(
                        one.item(), one.volume(), one.price(), one.footprint(), one.load(), one.load(), one.stock()))
                .toList();
        return new Problem(
                weighed,
                required,
                most,
                mixed,
                footprintLimit,
                NO_LIMIT,
                Objective.completed(List.of(Objective.LIGHTEST)));
    }
}
