package org.ullage.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** Walks from one method to another, one convention at a time. */
final class ConventionWalk {

    private final SizingJob job;
    private final Method first;
    private final Method second;

    ConventionWalk(SizingJob job, Method first, Method second) {
        this.job = job;
        this.first = first;
        this.second = second;
    }

    /** The conventions in which the two methods say something different, in the order of {@link Convention}. */
    static List<Convention> differing(Method first, Method second, VesselKind kind) {
        List<Convention> differing = new ArrayList<>();
        for (Convention convention : Convention.values()) {
            if (!convention.words(first, kind).equals(convention.words(second, kind))) {
                differing.add(convention);
            }
        }
        return differing;
    }

    Explanation explanation() {
        Sizing start = first.size(job);
        Sizing end = second.size(job);
        List<Explanation.Change> changes = new ArrayList<>();
        List<Convention> pending = new ArrayList<>();
        Method at = first;
        Volume volume = start.requiredVolume();
        for (Convention convention : differing(first, second, job.vessel().kind())) {
            at = convention.taken(at, second);
            pending.add(convention);
            Optional<Volume> after = volume(at);
            if (after.isPresent()) {
                changes.add(
                        new Explanation.Change(pending, after.get(), after.get().minus(volume)));
                volume = after.get();
                pending.clear();
            }
        }
        return new Explanation(start, end, changes);
    }

    /** Half-way between two methods the conventions may not go together; then the next one is exchanged with this one. */
    private Optional<Volume> volume(Method mixed) {
        try {
            return Optional.of(mixed.size(job).requiredVolume());
        } catch (OutOfRangeException | MissingInputException notTogether) {
            return Optional.empty();
        }
    }
}
