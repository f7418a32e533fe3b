package org.ullage.selection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Sizing;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * What is to be chosen: the requirement, the limits, and what the choice is to have least of. Immutable; every method gives a copy.
 *
 * @param requirement what the vessels must do
 * @param limits how many there may be and what room, floor and stock allow
 * @param objectives in their order; those not named decide after them, in the order of {@link Objective}. If two combinations are equal
 *     in all of them, the one with the larger largest vessel wins, then the one with the larger second largest and so on; between
 *     vessels that count alike the one that stands first in the catalogue
 */
public record SelectionJob(Requirement requirement, Limits limits, List<Objective> objectives) implements Serializable {

    /**
     * Checks and copies the objectives.
     *
     * @param requirement what the vessels must do
     * @param limits how many there may be and what room, floor and stock allow
     * @param objectives each at most once
     * @throws OutOfRangeException if an objective stands twice
     */
    public SelectionJob {
        objectives = List.copyOf(objectives);
        if (Set.copyOf(objectives).size() < objectives.size()) {
            throw new OutOfRangeException("objectives", objectives.toString(), "named once each", "leave one out");
        }
    }

    /**
     * A job for closed vessels of any kind, up to six, cheapest first, with nothing else limited.
     *
     * @param nominal nominal volume required by the gas law, or null if only an acceptance volume is
     * @param acceptance water to take in, or null if it is not known
     * @return the job
     * @throws MissingInputException if neither is given
     * @throws OutOfRangeException if one is not above zero
     */
    public static SelectionJob forVolumes(@Nullable Volume nominal, @Nullable Volume acceptance) {
        Set<VesselKind> closed = EnumSet.complementOf(EnumSet.of(VesselKind.OPEN));
        return new SelectionJob(
                new Requirement(nominal, acceptance, null, null, closed), Limits.USUAL, List.of(Objective.CHEAPEST));
    }

    /**
     * The job a sizing sets: its gas-law volume (the acceptance limits are those of the catalogue's vessels), its acceptance volume, its
     * kind of vessel, and as far as they were given the relief setting as least rating, the safety temperature or else the highest
     * of the loop, and the density of its cold fluid.
     *
     * @param sizing the answer of a method
     * @return the job, up to six vessels, cheapest first
     */
    public static SelectionJob of(Sizing sizing) {
        Requirement requirement = new Requirement(
                sizing.gasLawVolume(),
                sizing.acceptanceVolume(),
                sizing.job().pressures().reliefSetting(),
                hottest(sizing),
                Set.of(sizing.job().vessel().kind()));
        return new SelectionJob(
                requirement, Limits.USUAL.withLoad(null, coldDensity(sizing)), List.of(Objective.CHEAPEST));
    }

    private static @Nullable Temperature hottest(Sizing sizing) {
        LoopTemperatures temperatures = sizing.job().temperatures();
        return temperatures.safety() == null ? temperatures.hot() : temperatures.safety();
    }

    private static @Nullable Density coldDensity(Sizing sizing) {
        Temperature cold = sizing.job().temperatures().cold();
        if (cold == null) {
            return null;
        }
        double pressure = sizing.coldPressure().absolute(sizing.atmosphere()).si();
        return Density.kilogramsPerCubicMetre(1 / sizing.job().loop().fluid().specificVolumeSi(cold.si(), pressure));
    }

    /**
     * The rating every vessel must have.
     *
     * @param reliefSetting setting of the relief valve
     * @return a copy with it
     */
    public SelectionJob ratedFor(GaugePressure reliefSetting) {
        return with(requirement.withRating(reliefSetting));
    }

    /**
     * The temperature every vessel must stand.
     *
     * @param highest highest temperature at the vessel
     * @return a copy with it
     */
    public SelectionJob ratedFor(Temperature highest) {
        return with(requirement.withTemperature(highest));
    }

    /**
     * The kinds that may be used.
     *
     * @param kinds at least one
     * @return a copy with them
     */
    public SelectionJob ofKinds(Set<VesselKind> kinds) {
        return with(requirement.withKinds(kinds));
    }

    /**
     * The most vessels.
     *
     * @param vessels 1 to 12
     * @return a copy with it
     */
    public SelectionJob atMost(int vessels) {
        return with(limits.withVessels(vessels));
    }

    /**
     * Vessels of one item only.
     *
     * @return a copy that does not mix sizes
     */
    public SelectionJob sameSizeOnly() {
        return with(limits.withMixed(false));
    }

    /**
     * The floor there is.
     *
     * @param footprint floor area for all vessels
     * @return a copy with it
     */
    public SelectionJob within(Area footprint) {
        return with(limits.withFootprint(footprint));
    }

    /**
     * The height there is.
     *
     * @param height height for the tallest
     * @return a copy with it
     */
    public SelectionJob noTallerThan(Length height) {
        return with(limits.withHeight(height));
    }

    /**
     * What floor or struts carry.
     *
     * @param load mass of all vessels, waterlogged
     * @param fluid density of the loop's fluid, cold
     * @return a copy with both
     */
    public SelectionJob noHeavierThan(Mass load, Density fluid) {
        return with(limits.withLoad(load, fluid));
    }

    /**
     * The order of objectives.
     *
     * @param first what matters first
     * @param further what decides between equals
     * @return a copy with it
     */
    public SelectionJob by(Objective first, Objective... further) {
        List<Objective> order = new ArrayList<>(List.of(further));
        order.add(0, first);
        return new SelectionJob(requirement, limits, order);
    }

    /** The objectives in the order in which they decide. */
    List<Objective> order() {
        return Objective.completed(objectives);
    }

    SelectionJob with(Requirement other) {
        return new SelectionJob(other, limits, objectives);
    }

    SelectionJob with(Limits other) {
        return new SelectionJob(requirement, other, objectives);
    }
}
