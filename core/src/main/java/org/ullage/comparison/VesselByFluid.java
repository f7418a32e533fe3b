package org.ullage.comparison;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.TextTable;

/**
 * What the choice of a fluid model costs: one job by one method with several fluids or models of a fluid, in litres of vessel.
 * Immutable.
 *
 * @param rows a row for each fluid, in the order they were given
 */
public record VesselByFluid(List<Row> rows) implements Serializable {

    /** The columns of {@link #table}. */
    private static final List<String> HEADER =
            List.of("fluid", "model", "net expansion", "required volume", "beyond the first", "refused");

    /**
     * One fluid.
     *
     * @param fluid the fluid and its model
     * @param sizing the answer, or null if it was refused
     * @param reason why it was refused, empty if it was not
     */
    public record Row(LoopFluid fluid, @Nullable Sizing sizing, String reason) implements Serializable {}

    /**
     * Copies the rows.
     *
     * @param rows a row for each fluid
     */
    public VesselByFluid {
        rows = List.copyOf(rows);
    }

    /**
     * Sizes the vessel with each fluid.
     *
     * @param job what is to be sized; its own fluid is replaced
     * @param method the method; one that does not count the fluid's density gives the same answer for all
     * @param fluids the fluids or models, the one to compare with first
     * @return the comparison
     */
    public static VesselByFluid of(SizingJob job, Method method, List<? extends LoopFluid> fluids) {
        List<Row> rows = new ArrayList<>();
        for (LoopFluid fluid : fluids) {
            try {
                rows.add(new Row(fluid, method.size(job.with(job.loop().refilledWith(fluid))), ""));
            } catch (OutOfRangeException | MissingInputException refusal) {
                rows.add(new Row(fluid, null, String.valueOf(refusal.getMessage())));
            }
        }
        return new VesselByFluid(rows);
    }

    /**
     * The comparison as rows of text for CSV: fluid, model, net expansion, required volume, how much that is beyond the first fluid
     * that answered, and why a fluid was refused.
     *
     * @param system metric or inch-pound
     * @return the header and a row for each fluid
     */
    public List<List<String>> table(UnitSystem system) {
        List<List<String>> table = new ArrayList<>();
        table.add(HEADER);
        Volume first = first();
        for (Row row : rows) {
            table.add(cells(row, first, system));
        }
        return table;
    }

    private Volume first() {
        return rows.stream()
                .map(Row::sizing)
                .filter(Objects::nonNull)
                .findFirst()
                .map(Sizing::requiredVolume)
                .orElse(Volume.litres(0));
    }

    private static List<String> cells(Row row, Volume first, UnitSystem system) {
        Sizing sizing = row.sizing();
        return sizing == null
                ? List.of(row.fluid().name(), row.fluid().model(), "", "", "", row.reason())
                : List.of(
                        row.fluid().name(),
                        row.fluid().model(),
                        sizing.expansionVolume().text(system),
                        sizing.requiredVolume().text(system),
                        sizing.requiredVolume().minus(first).text(system),
                        "");
    }

    /**
     * The comparison as an aligned table; what was refused follows below it.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        int shown = HEADER.size() - 1;
        TextTable table = new TextTable(HEADER.subList(0, shown));
        Volume first = first();
        StringBuilder refused = new StringBuilder();
        for (Row row : rows) {
            if (row.sizing() == null) {
                refused.append(row.fluid().model())
                        .append(" refused: ")
                        .append(row.reason())
                        .append('\n');
            } else {
                table.add(cells(row, first, system).subList(0, shown));
            }
        }
        return table.text() + refused;
    }
}
