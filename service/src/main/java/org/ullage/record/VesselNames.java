package org.ullage.record;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/** Vessels by their names: a slip in a name must not lose a reading without a word. */
final class VesselNames {

    private VesselNames() {}

    static void requireOwn(List<VesselNote> vessels) {
        if (vessels.isEmpty()) {
            throw new MissingInputException("vessel", "a commissioning note", "describe at least one");
        }
        requireEachOnce("name of a vessel", vessels.stream().map(VesselNote::id).toList());
    }

    static void requireOnce(List<ChargeCheck> charges) {
        requireEachOnce(
                "vessel of a visit", charges.stream().map(ChargeCheck::vessel).toList());
    }

    private static void requireEachOnce(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new OutOfRangeException(
                        what, PlainText.quoted(name), "there once", "give each vessel a name of its own");
            }
        }
    }

    /** Follows the vessels through the visits. */
    static void requireKnown(CommissioningNote commissioning, List<VisitRecord> visits) {
        Map<String, VesselNote> there = byName(commissioning);
        for (VisitRecord visit : visits) {
            requireSince(commissioning.date(), visit.date());
            visit.replacements().forEach(replacement -> requireKnown(there.keySet(), replacement.vessel(), visit));
            Set<String> known = new HashSet<>(there.keySet());
            replace(there, visit);
            known.addAll(there.keySet());
            visit.charges().forEach(charge -> requireKnown(known, charge.vessel(), visit));
        }
    }

    /** The vessels after the visits, in order. */
    static List<VesselNote> after(CommissioningNote commissioning, List<VisitRecord> visits) {
        Map<String, VesselNote> there = byName(commissioning);
        visits.forEach(visit -> replace(there, visit));
        return List.copyOf(there.values());
    }

    private static Map<String, VesselNote> byName(CommissioningNote commissioning) {
        Map<String, VesselNote> vessels = new LinkedHashMap<>();
        commissioning.vessels().forEach(vessel -> vessels.put(vessel.id(), vessel));
        return vessels;
    }

    private static void replace(Map<String, VesselNote> there, VisitRecord visit) {
        visit.replacements().forEach(replacement -> there.remove(replacement.vessel()));
        visit.replacements()
                .forEach(replacement -> there.put(replacement.fitted().id(), replacement.fitted()));
    }

    private static void requireSince(RecordDate commissioning, RecordDate visit) {
        if (visit.compareTo(commissioning) < 0) {
            throw new OutOfRangeException(
                    "date of a visit",
                    visit.toString(),
                    "on or after the commissioning on " + commissioning,
                    "check the year of both");
        }
    }

    private static void requireKnown(Set<String> known, String name, VisitRecord visit) {
        if (!known.contains(name)) {
            throw new OutOfRangeException(
                    "vessel of the visit of " + visit.date(),
                    PlainText.quoted(name),
                    "one of " + known.stream().sorted().map(PlainText::quoted).collect(Collectors.joining(", ")),
                    "write the name as the commissioning note or the replacement has it");
        }
    }
}
