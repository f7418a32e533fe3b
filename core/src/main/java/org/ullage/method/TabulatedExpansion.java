package org.ullage.method;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * Expansion from a short list by the highest temperature, as rules for open tanks print it; a temperature between two rows takes the
 * next hotter row. Immutable.
 *
 * @param rows coolest first
 * @param source where the list comes from
 */
public record TabulatedExpansion(List<Row> rows, Source source) implements ExpansionRule {

    /**
     * A row of the list.
     *
     * @param upTo highest temperature it is for
     * @param share share of the contents
     */
    public record Row(Temperature upTo, Constant share) implements Serializable {

        private String words() {
            return share.text() + " up to " + upTo.text(UnitSystem.SI);
        }
    }

    /**
     * Copies the rows.
     *
     * @param rows coolest first
     * @param source where the list comes from
     */
    public TabulatedExpansion {
        rows = List.copyOf(rows);
    }

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return row(states).share().value();
    }

    private Row row(ThermalStates states) {
        return rows.stream()
                .filter(row -> states.hotKelvins() <= row.upTo().si())
                .findFirst()
                .orElseThrow(() -> new OutOfRangeException(
                        "highest temperature",
                        states.hot().textInBothSystems(),
                        "at or below "
                                + rows.get(rows.size() - 1).upTo().textInBothSystems()
                                + " for this rule ("
                                + source.document() + ")",
                        "take a method that uses the fluid's density"));
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return false;
    }

    @Override
    public boolean coversBoilingAtTheTank() {
        return true;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        return List.of(Step.given(
                "expansion by the rule's list, as a share of the contents",
                Term.number("e", fraction),
                row(states).words(),
                source));
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        List<Caution> warnings = new ArrayList<>();
        Row row = row(states);
        if (states.hotKelvins() < row.upTo().si()) {
            warnings.add(new Caution(
                    "This rule's list has no row for " + states.hot().textInBothSystems()
                            + ": the next hotter one was taken, " + row.words() + ".",
                    source));
        }
        if (!fluid.isWater()) {
            warnings.add(WaterRule.isNotFor(fluid, source));
        }
        return warnings;
    }

    /**
     * The convention in words.
     *
     * @return the rows
     */
    @Override
    public String toString() {
        return rows.stream().map(Row::words).collect(Collectors.joining("; "));
    }
}
