package org.ullage.selection;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.TextTable;

/** A selection for people. */
final class SelectionText {

    private SelectionText() {}

    static String of(Selection selection, UnitSystem system) {
        StringBuilder text = new StringBuilder(lines(selection.chosen(), system));
        line(text, "required", required(selection.job().requirement(), system));
        line(text, "total", totals(selection, system));
        line(text, "chosen for", order(selection, system));
        line(text, "oversize", selection.oversize().text(system));
        line(text, "runner-up", runnerUp(selection, system));
        selection.warnings().forEach(warning -> line(text, "warning", warning.text()));
        selection.cautions().forEach(caution -> line(text, "caution", caution.text()));
        return text.append(excluded(selection)).toString();
    }

    static String excluded(SelectionResult result) {
        return result.excluded().stream()
                .map(one -> "not usable: " + one + "\n")
                .collect(Collectors.joining());
    }

    private static String lines(Combination chosen, UnitSystem system) {
        TextTable table = new TextTable(List.of(
                "count", "vessel", "kind", "nominal", "acceptance", "rated for", "height", "connection", "price each"));
        for (Combination.Line line : chosen.lines()) {
            CatalogueItem item = line.item();
            table.add(List.of(
                    String.valueOf(line.count()),
                    item.id(),
                    item.kind().word(),
                    item.nominal().text(system),
                    item.lacksAcceptanceLimit()
                            ? "not known"
                            : item.acceptance().text(system),
                    item.rating().text(system),
                    item.height().text(system),
                    item.connection(),
                    item.price().toPlainString()));
        }
        return table.text();
    }

    private static String required(Requirement requirement, UnitSystem system) {
        String nominal = Optional.ofNullable(requirement.nominal())
                .map(volume -> "nominal " + volume.text(system))
                .orElse("nominal not given");
        return nominal
                + Optional.ofNullable(requirement.acceptance())
                        .map(volume -> ", acceptance " + volume.text(system))
                        .orElse(", acceptance not given");
    }

    private static String totals(Selection selection, UnitSystem system) {
        Combination chosen = selection.chosen();
        String waterlogged = Optional.ofNullable(selection.job().limits().fluid())
                .map(fluid -> ", waterlogged " + chosen.waterloggedMass(fluid).text(system))
                .orElse(", waterlogged not known (density not given)");
        return "nominal " + chosen.nominal().text(system) + ", acceptance "
                + chosen.acceptance().text(system) + ", price " + chosen.price().toPlainString() + ", footprint "
                + chosen.footprint().text(system) + ", empty "
                + chosen.emptyMass().text(system) + waterlogged
                + ", tallest " + chosen.tallest().text(system);
    }

    private static String order(Selection selection, UnitSystem system) {
        return selection.job().order().stream()
                .map(objective -> "least " + objective.word() + " " + objective.amount(selection.chosen(), system))
                .collect(Collectors.joining(", then "));
    }

    private static String runnerUp(Selection selection, UnitSystem system) {
        RunnerUp second = selection.runnerUp();
        return second == null ? "none" : second.combination() + ": " + second.reason(system);
    }

    private static void line(StringBuilder text, String title, String content) {
        text.append(title).append(": ").append(content).append('\n');
    }
}
