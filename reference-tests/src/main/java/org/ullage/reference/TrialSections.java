package org.ullage.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Family;
import org.ullage.diagnosis.Hypothesis;

/** Cuts trials of the diagnosis into sections of a report. */
final class TrialSections {

    private static final String HOW =
            "Invented heating loops: contents 60 to 2000 L and recorded within 5 %, charge 0.8 to 1.5 bar,"
                    + " filled 0.2 to 0.4 bar above it, relief valve 3 bar, vessel 1.1 to 1.6 times what the loop needs; gauge of class"
                    + " 1.0, 0 to 4 bar, thermometer within 1 K, gas temperature adrift by 2 K. Pressures by the mass balance with water"
                    + " by IAPWS-IF97. Rows are what was put wrong, columns the verdict where the diagnosis decided,"
                    + " on one hypothesis or on a family of them.";

    private static final String COMPACT =
            "Percent of the systems: named, cannot decide, named wrongly; and how often the likeliest hypothesis names the fault.";

    private TrialSections() {}

    /** Confusion matrix: what was put wrong by what was said. */
    static Section matrix(FaultTrial trial) {
        List<Hypothesis> said = Arrays.stream(Hypothesis.values())
                .filter(hypothesis -> trial.diagnoses().values().stream()
                        .flatMap(List::stream)
                        .anyMatch(says(hypothesis)))
                .toList();
        List<Family> families = Arrays.stream(Family.values())
                .filter(family -> trial.diagnoses().values().stream()
                        .flatMap(List::stream)
                        .anyMatch(says(family)))
                .toList();
        List<String> header = new ArrayList<>(List.of("fault"));
        said.forEach(hypothesis -> header.add(hypothesis.word()));
        families.forEach(family -> header.add(family.words()));
        header.add("cannot decide");
        List<List<String>> rows = new ArrayList<>();
        trial.diagnoses().forEach((fault, diagnoses) -> {
            List<String> row = new ArrayList<>(List.of(fault.toString()));
            said.forEach(hypothesis -> row.add(count(diagnoses, says(hypothesis))));
            families.forEach(family -> row.add(count(diagnoses, says(family))));
            row.add(count(diagnoses, diagnosis -> !diagnosis.decided()));
            rows.add(row);
        });
        return new Section("Synthetic faults, " + trial.title(), HOW, header, rows);
    }

    private static Predicate<Diagnosis> says(Hypothesis hypothesis) {
        return diagnosis -> diagnosis.isNamed() && diagnosis.likeliest().hypothesis() == hypothesis;
    }

    private static Predicate<Diagnosis> says(Family family) {
        return diagnosis -> diagnosis.decided()
                && !diagnosis.isNamed()
                && diagnosis.likeliest().hypothesis().family() == family;
    }

    private static String count(List<Diagnosis> diagnoses, Predicate<Diagnosis> holds) {
        return String.valueOf(diagnoses.stream().filter(holds).count());
    }

    /** For each trial how often the fault was named, left open or mistaken, and how often it headed the ranking. */
    static Section compact(List<FaultTrial> trials) {
        List<String> header = new ArrayList<>(List.of("fault"));
        trials.forEach(trial -> {
            header.add(trial.title());
            header.add("likeliest");
        });
        List<List<String>> rows = Arrays.stream(SeededFault.values())
                .map(fault -> compactRow(trials, fault))
                .toList();
        return new Section("Synthetic faults", COMPACT, header, rows);
    }

    private static List<String> compactRow(List<FaultTrial> trials, SeededFault fault) {
        List<String> row = new ArrayList<>(List.of(fault.toString()));
        Predicate<Diagnosis> heads =
                diagnosis -> fault.isNamedBy(diagnosis.likeliest().hypothesis());
        for (FaultTrial trial : trials) {
            row.add(percent(trial.share(fault, fault::isNamedBy)) + " / "
                    + percent(trial.share(fault, diagnosis -> !diagnosis.decided())) + " / "
                    + percent(trial.share(fault, diagnosis -> diagnosis.decided() && !fault.isNamedBy(diagnosis))));
            row.add(percent(trial.share(fault, heads)));
        }
        return row;
    }

    private static String percent(double share) {
        return String.valueOf(Math.round(100 * share));
    }
}
