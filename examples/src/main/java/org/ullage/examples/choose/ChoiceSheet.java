package org.ullage.examples.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.quantity.UnitSystem;
import org.ullage.selection.Combination;
import org.ullage.selection.RunnerUp;
import org.ullage.selection.Selection;
import org.ullage.workings.Caution;

/** A choice as CSV: a row for each size that is bought, with the totals in every row. */
final class ChoiceSheet {

    private static final List<String> HEADER = List.of(
            "id",
            "count",
            "vessel",
            "nominal",
            "price_each",
            "total_nominal",
            "total_acceptance",
            "total_price",
            "total_footprint",
            "total_empty",
            "oversize",
            "runner_up",
            "runner_up_lost",
            "warnings");

    private ChoiceSheet() {}

    static List<List<String>> rows(String id, Selection selection, UnitSystem system) {
        List<List<String>> rows = new ArrayList<>(List.of(HEADER));
        for (Combination.Line line : selection.chosen().lines()) {
            List<String> row = new ArrayList<>(List.of(
                    id,
                    Integer.toString(line.count()),
                    line.item().id(),
                    line.item().nominal().text(system),
                    line.item().price().toPlainString()));
            row.addAll(totals(selection, system));
            rows.add(row);
        }
        return rows;
    }

    private static List<String> totals(Selection selection, UnitSystem system) {
        Combination chosen = selection.chosen();
        RunnerUp second = selection.runnerUp();
        return List.of(
                chosen.nominal().text(system),
                chosen.acceptance().text(system),
                chosen.price().toPlainString(),
                chosen.footprint().text(system),
                chosen.emptyMass().text(system),
                selection.oversize().volume().text(system),
                second == null ? "" : second.combination().toString(),
                second == null ? "" : second.reason(system),
                selection.warnings().stream().map(Caution::text).collect(Collectors.joining(" | ")));
    }
}
