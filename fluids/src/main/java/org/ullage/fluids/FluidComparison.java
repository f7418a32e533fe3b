package org.ullage.fluids;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.VolumeFraction;

/**
 * What the choice of model is worth: every model of a fluid over one span of temperatures, with its densities, its expansion
 * and the difference to a chosen one; a model that does not cover the span stays in the list with its reason. Immutable.
 */
public final class FluidComparison implements Serializable {

    private static final long serialVersionUID = 1L;

    private final String fluid;
    private final Temperature from;
    private final Temperature to;

    @SuppressWarnings("serial") // the lists of List.copyOf and Stream.toList are serializable
    private final List<ComparedFluid> rows;

    private FluidComparison(
            String fluid, List<Candidate> candidates, LoopFluid chosen, Temperature from, Temperature to) {
        this.fluid = fluid;
        this.from = from;
        this.to = to;
        OptionalDouble percent = percent(chosen, from, to);
        this.rows = candidates.stream()
                .map(candidate -> candidate.row(chosen, percent, from, to))
                .toList();
    }

    /** A model that may not even reach the concentration. */
    private record Candidate(String label, Supplier<LoopFluid> make) {

        static Candidate of(LoopFluid fluid) {
            return new Candidate(fluid.model(), () -> fluid);
        }

        ComparedFluid row(LoopFluid chosen, OptionalDouble chosenPercent, Temperature from, Temperature to) {
            String name = label;
            boolean isChosen = false;
            try {
                LoopFluid fluid = make.get();
                name = fluid.model();
                isChosen = fluid.equals(chosen);
                return ComparedFluid.answering(name, isChosen, Expansion.between(fluid, from, to), chosenPercent);
            } catch (OutOfRangeException refusal) {
                return ComparedFluid.refusing(name, isChosen, refusal);
            }
        }
    }

    private static OptionalDouble percent(LoopFluid chosen, Temperature from, Temperature to) {
        try {
            return OptionalDouble.of(Expansion.between(chosen, from, to).percent());
        } catch (OutOfRangeException refused) {
            return OptionalDouble.empty();
        }
    }

    /**
     * Compares the models in a list.
     *
     * @param models the models, of one fluid
     * @param chosen the one the others are held against; put first if it is not in the list
     * @param from temperature at the start
     * @param to temperature at the end
     * @return the comparison, in the order of the list
     */
    public static FluidComparison of(
            List<? extends LoopFluid> models, LoopFluid chosen, Temperature from, Temperature to) {
        Stream<LoopFluid> first = models.contains(chosen) ? Stream.empty() : Stream.of(chosen);
        List<Candidate> candidates =
                Stream.concat(first, models.stream()).map(Candidate::of).toList();
        return new FluidComparison(chosen.name(), candidates, chosen, from, to);
    }

    /**
     * Compares the models of plain water, held against IAPWS-IF97.
     *
     * @param from temperature at the start
     * @param to temperature at the end
     * @return the comparison
     */
    public static FluidComparison ofWater(Temperature from, Temperature to) {
        return of(Fluids.waterModels(), Water.IAPWS_IF97, from, to);
    }

    /**
     * Compares the models of a glycol mixture, those that do not reach the concentration included.
     *
     * @param chosen the fluid the others are held against; its concentration is the one compared
     * @param from temperature at the start
     * @param to temperature at the end
     * @return the comparison, in the order of {@link GlycolModel}
     */
    public static FluidComparison of(GlycolSolution chosen, Temperature from, Temperature to) {
        List<Candidate> candidates = new ArrayList<>();
        Stream.concat(Glycol.compared(), Stream.of(chosen.densityModel()))
                .distinct()
                .forEach(model -> candidates.add(new Candidate(model.title(), () -> chosen.by(model))));
        return new FluidComparison(chosen.name(), candidates, chosen, from, to);
    }

    /**
     * Compares the models of a glycol mixture, held against the default one.
     *
     * @param glycol which glycol
     * @param volume glycol by volume
     * @param from temperature at the start
     * @param to temperature at the end
     * @return the comparison
     * @throws OutOfRangeException if the default model does not reach the concentration
     */
    public static FluidComparison of(Glycol glycol, VolumeFraction volume, Temperature from, Temperature to) {
        return of(glycol.of(volume), from, to);
    }

    /**
     * Compares the models of a glycol mixture, held against the default one.
     *
     * @param glycol which glycol
     * @param mass glycol by mass
     * @param from temperature at the start
     * @param to temperature at the end
     * @return the comparison
     * @throws OutOfRangeException if the default model does not reach the concentration
     */
    public static FluidComparison of(Glycol glycol, MassFraction mass, Temperature from, Temperature to) {
        return of(glycol.of(mass), from, to);
    }

    /**
     * The models.
     *
     * @return one row for each, refusals included
     */
    public List<ComparedFluid> rows() {
        return rows;
    }

    /**
     * The comparison as a table for people; what refuses follows below it with its reason.
     *
     * @param system metric (kg/m3, degC) or inch-pound (lb/ft3, degF)
     * @return lines ending in a line feed; the chosen model is marked with a star
     */
    public String text(UnitSystem system) {
        return new FluidComparisonText(fluid, from, to, system).table(rows);
    }

    /**
     * The comparison as CSV (RFC 4180), a line for each model, refusals included. Temperatures and densities with their units.
     *
     * @param system metric (kg/m3, degC) or inch-pound (lb/ft3, degF)
     * @return the header and the lines
     */
    public String csv(UnitSystem system) {
        return new FluidComparisonText(fluid, from, to, system).csv(rows);
    }

    /**
     * The comparison in metric units.
     *
     * @return as {@link #text(UnitSystem)}
     */
    @Override
    public String toString() {
        return text(UnitSystem.SI);
    }
}
