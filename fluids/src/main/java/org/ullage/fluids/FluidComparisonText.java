package org.ullage.fluids;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/** A {@link FluidComparison} as a table for people and as CSV. */
final class FluidComparisonText {

    /** Six digits of a density show the last one that the tables print. */
    private static final int DENSITY_DIGITS = 6;

    private static final String NONE_STATED = "none stated";

    private final String fluid;
    private final String from;
    private final String to;
    private final UnitSystem system;

    FluidComparisonText(String fluid, Temperature from, Temperature to, UnitSystem system) {
        this.fluid = fluid;
        this.from = from.text(system);
        this.to = to.text(system);
        this.system = system;
    }

    String table(List<ComparedFluid> rows) {
        List<List<String>> table = new ArrayList<>();
        table.add(List.of(
                "",
                "model",
                "density at " + from,
                "at " + to,
                "expansion",
                "difference",
                "stated uncertainty",
                "remark"));
        StringBuilder refusals = new StringBuilder();
        for (ComparedFluid row : rows) {
            row.expansion()
                    .ifPresentOrElse(expansion -> table.add(line(row, expansion)), () -> refusals.append(refusal(row)));
        }
        return fluid + ", " + from + " to " + to + "\n" + FluidText.columns(table) + refusals;
    }

    private List<String> line(ComparedFluid row, Expansion expansion) {
        String points = points(row);
        return List.of(
                row.isChosen() ? "*" : "",
                row.label(),
                density(expansion.fromDensity()),
                density(expansion.toDensity()),
                percent(expansion) + " %",
                points.isEmpty() ? "" : points + " points",
                row.densityUncertainty()
                        .map(stated -> stated.value() + " " + stated.unit() + " (" + stated.symbol() + ")")
                        .orElse(NONE_STATED),
                row.remark());
    }

    private static String refusal(ComparedFluid row) {
        return (row.isChosen() ? "*  " : "") + row.label() + " refuses: " + row.refusal() + "\n";
    }

    String csv(List<ComparedFluid> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of(
                "fluid",
                "model",
                "chosen",
                "from",
                "to",
                "from_density",
                "to_density",
                "expansion_percent",
                "difference_points",
                "stated_uncertainty",
                "remark",
                "refusal"));
        rows.forEach(row -> lines.add(record(row)));
        return FluidText.csv(lines);
    }

    private List<String> record(ComparedFluid row) {
        return List.of(
                fluid,
                row.label(),
                row.isChosen() ? "yes" : "no",
                from,
                to,
                row.expansion()
                        .map(expansion -> density(expansion.fromDensity()))
                        .orElse(""),
                row.expansion().map(expansion -> density(expansion.toDensity())).orElse(""),
                row.expansion().map(FluidComparisonText::percent).orElse(""),
                points(row),
                row.expansion().isPresent() ? uncertainty(row) : "",
                row.remark(),
                row.refusal());
    }

    private String density(Density density) {
        return density.text(system, DENSITY_DIGITS);
    }

    private static String percent(Expansion expansion) {
        return FluidText.fixed(expansion.percent(), FluidText.PERCENT_DECIMALS);
    }

    private static String points(ComparedFluid row) {
        return row.differencePoints().isPresent()
                ? FluidText.signed(row.differencePoints().getAsDouble(), FluidText.PERCENT_DECIMALS)
                : "";
    }

    private static String uncertainty(ComparedFluid row) {
        return row.densityUncertainty().map(Constant::toString).orElse(NONE_STATED);
    }
}
