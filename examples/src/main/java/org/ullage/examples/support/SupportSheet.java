package org.ullage.examples.support;

import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.UnitSystem;
import org.ullage.support.Bracket;
import org.ullage.support.LimitCheck;

/** The checks as CSV: a row for each, or one with the weights alone where nothing was to check. */
final class SupportSheet {

    static final List<String> HEADER = List.of(
            "id",
            "empty",
            "waterlogged",
            "twice_filled",
            "check",
            "actual",
            "allowed",
            "use_percent",
            "verdict",
            "source",
            "error");

    private static final int DIGITS = 4;

    private static final int PERCENT = 100;

    private SupportSheet() {}

    static List<List<String>> rows(SupportLine line, SupportAnswer answer) {
        UnitSystem system = line.system();
        List<String> weights = List.of(
                line.id(),
                answer.weight().empty().text(system, DIGITS),
                answer.weight().waterlogged().text(system, DIGITS),
                answer.weight().twiceFilled().text(system, DIGITS));
        List<List<String>> rows = new ArrayList<>();
        answer.checks().forEach(check -> rows.add(row(weights, check, system)));
        answer.bracket().ifPresent(held -> rows.add(together(weights, held)));
        if (rows.isEmpty()) {
            rows.add(with(weights, List.of("", "", "", "", "", "", "")));
        }
        return rows;
    }

    static List<String> refusal(SupportLine line, String error) {
        return with(List.of(line.id(), "", "", ""), List.of("", "", "", "", "", "", error));
    }

    private static List<String> row(List<String> weights, LimitCheck<?> check, UnitSystem system) {
        return with(
                weights,
                List.of(
                        check.what(),
                        check.actual().text(system, DIGITS),
                        check.allowed().text(system, DIGITS),
                        Long.toString(Math.round(PERCENT * check.use())),
                        check.passes() ? "passes" : "refused",
                        check.source().toString(),
                        ""));
    }

    /** Pull and shear of an anchor count together. */
    private static List<String> together(List<String> weights, Bracket held) {
        String use = Long.toString(Math.round(PERCENT * held.combinedUse()));
        return with(
                weights, List.of("pull and shear together", "", "", use, held.passes() ? "passes" : "refused", "", ""));
    }

    private static List<String> with(List<String> first, List<String> then) {
        List<String> row = new ArrayList<>(first);
        row.addAll(then);
        return row;
    }
}
