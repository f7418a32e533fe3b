package org.ullage.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ullage.method.Sizing;
import org.ullage.method.SizingInput;
import org.ullage.provenance.Source;
import org.ullage.quantity.Digits;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.TextTable;

/** What the answers of this package have in common when they are printed. */
final class UncertaintyText {

    /** An uncertainty or a chance is not known to more. */
    private static final int DIGITS = 2;

    private UncertaintyText() {}

    /** The uncertain inputs with their shares, the one that matters most first. */
    static String shares(SizingUncertainty question, Map<SizingInput, Double> shares, UnitSystem system) {
        TextTable table = new TextTable(List.of("input", "share of variance", "stated"));
        shares.entrySet().stream()
                .sorted(Map.Entry.<SizingInput, Double>comparingByValue().reversed())
                .forEach(entry -> table.add(List.of(
                        entry.getKey().toString(),
                        percent(entry.getValue()),
                        question.stated(entry.getKey(), system))));
        return table.text();
    }

    static String percent(double share) {
        return Digits.significant(100 * share, DIGITS) + " %";
    }

    /** Empty if nothing was refused. */
    static String refusals(MonteCarloResult result) {
        long refused = result.draws() - result.answered();
        if (refused == 0) {
            return "";
        }
        String reasons = result.refusals().entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
        return refused + " of " + result.draws() + " draws have no answer, refused for: " + reasons + "\n";
    }

    static String origin(MonteCarloResult result) {
        return result.draws() + " draws, seed " + result.seed();
    }

    static List<Caution> cautions(Sizing centre, Source source) {
        List<Caution> cautions = new ArrayList<>(centre.cautions());
        cautions.add(new Caution(
                "The uncertainty is that of the stated spreads, taken as independent of each other, by this method: it knows nothing"
                        + " of blunders, faults and what the method leaves out.",
                source));
        return List.copyOf(cautions);
    }
}
