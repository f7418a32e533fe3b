package org.ullage.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.comparison.Convention;
import org.ullage.comparison.Explanation;
import org.ullage.method.Sizing;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.TextTable;

/** An explanation on paper: in words, or as rows for CSV. */
final class ExplanationSheet {

    /** Enough for the printed differences to add up to the last digit of a vessel's volume that matters. */
    private static final int DIGITS = 6;

    private final Explanation explanation;
    private final @Nullable Average average;
    private final UnitSystem system;

    ExplanationSheet(Explanation explanation, @Nullable Average average, UnitSystem system) {
        this.explanation = explanation;
        this.average = average;
        this.system = system;
    }

    String text() {
        String walk = explanation.text(system);
        return average == null || !average.refusal().isEmpty() ? walk : walk + averageText(average);
    }

    private String averageText(Average all) {
        TextTable table = new TextTable(List.of("on the average over all orders", ""));
        all.shares().forEach((convention, share) -> table.add(List.of("  " + convention, share.signedText(system))));
        table.add(List.of("  in all", explanation.difference().signedText(system)));
        return table.text();
    }

    /** A row for the first method and one for each step; the differences add up from the first row to the last. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = List.of("conventions", "from", "to", "difference", "required_volume");
        rows.add(withAverage(header, "average_difference"));
        Sizing first = explanation.first();
        List<String> start = List.of(first.method().name(), "", "", "", number(first.requiredVolume()));
        rows.add(withAverage(start, ""));
        explanation.changes().forEach(change -> rows.add(row(change)));
        return rows;
    }

    private List<String> row(Explanation.Change change) {
        List<Convention> exchanged = change.conventions();
        List<String> cells = List.of(
                joined(exchanged, Convention::toString),
                joined(exchanged, convention -> convention.words(explanation.first())),
                joined(exchanged, convention -> convention.words(explanation.second())),
                number(change.difference()),
                number(change.after()));
        return withAverage(cells, averages(exchanged));
    }

    /** Empty if there is no average. */
    private String averages(List<Convention> exchanged) {
        Map<Convention, Volume> shares = average == null ? Map.of() : average.shares();
        return exchanged.stream()
                .map(shares::get)
                .filter(Objects::nonNull)
                .map(this::number)
                .collect(Collectors.joining(" | "));
    }

    private List<String> withAverage(List<String> cells, String last) {
        List<String> all = new ArrayList<>(cells);
        if (average != null) {
            all.add(last);
        }
        return all;
    }

    private String number(Volume volume) {
        return volume.text(system, DIGITS);
    }

    private static String joined(List<Convention> conventions, Function<Convention, String> words) {
        return conventions.stream().map(words).collect(Collectors.joining(" | "));
    }
}
