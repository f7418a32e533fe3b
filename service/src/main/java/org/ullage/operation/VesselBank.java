package org.ullage.operation;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * Vessels on one loop, joined by water: what each holds at a pressure read at one reference point, each at its own level and by its own
 * charge. Immutable; the order of the vessels does not matter.
 *
 * <p>Vessel k sees p_k = p - rho_w g_n h_k and holds V_k (1 - p_0k/p_k), nothing below its charge, and no more than its acceptance
 * limit. Vessels of one charge and one level act as one of their volumes together.
 *
 * @param vessels one or more, of different names
 * @param atmosphere pressure of the surrounding air
 */
public record VesselBank(List<InstalledVessel> vessels, AbsolutePressure atmosphere) implements Serializable {

    /**
     * Checks the names.
     *
     * @param vessels one or more, of different names
     * @param atmosphere pressure of the surrounding air
     * @throws OutOfRangeException if there is no vessel or two have one name
     */
    public VesselBank {
        vessels = List.copyOf(vessels);
        if (vessels.isEmpty()) {
            throw new OutOfRangeException(
                    "number of vessels",
                    "0",
                    "1 or more",
                    "a closed loop without a vessel has no pressure to work out");
        }
        Set<String> names = new HashSet<>();
        for (InstalledVessel vessel : vessels) {
            if (!names.add(vessel.name())) {
                throw new OutOfRangeException(
                        "name of a vessel", vessel.name(), "given to one vessel only", "give each its own name");
            }
        }
    }

    /**
     * Vessels in air of a standard atmosphere, 101.325 kPa.
     *
     * @param vessels one or more, of different names
     * @return the bank
     * @throws OutOfRangeException if there is no vessel or two have one name
     */
    public static VesselBank of(InstalledVessel... vessels) {
        return new VesselBank(List.of(vessels), AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    /**
     * Water in all vessels.
     *
     * @param reference pressure at the reference point
     * @return the volume
     * @throws OutOfRangeException if the pressure is at or below vacuum
     */
    public Volume water(GaugePressure reference) {
        return Volume.ofSi(numbers().water(absolute(reference)));
    }

    /**
     * Water in each vessel.
     *
     * @param reference pressure at the reference point
     * @return in the order of the vessels
     * @throws OutOfRangeException if the pressure is at or below vacuum
     */
    public List<VesselShare> shares(GaugePressure reference) {
        double pascals = absolute(reference);
        return vessels.stream()
                .map(vessel -> new VesselShare(
                        vessel.name(), Volume.ofSi(vessel.group(atmosphere).water(pascals))))
                .toList();
    }

    /**
     * What the gas gives way by for a small rise of the pressure: dV/dp times the rise.
     *
     * @param reference pressure at the reference point
     * @param rise the small rise
     * @return the volume of water taken in
     * @throws OutOfRangeException if the pressure is at or below vacuum
     */
    public Volume gasCompliance(GaugePressure reference, PressureDifference rise) {
        return Volume.ofSi(numbers().compliance(absolute(reference)) * rise.si());
    }

    /**
     * The most water the vessels could take at any pressure: acceptance limits, or whole shells.
     *
     * @return the volume
     */
    public Volume capacity() {
        return Volume.ofSi(numbers().capacity());
    }

    /**
     * The pressure at which the vessels together hold an amount of water.
     *
     * @param water more than they hold when the first begins to take water, less than their capacity
     * @return pressure at the reference point
     * @throws OutOfRangeException if no one pressure belongs to this amount
     */
    public GaugePressure pressure(Volume water) {
        BankNumbers numbers = numbers();
        double least = numbers.water(numbers.floor());
        if (!numbers.hasGas() || !(water.si() > least && water.si() < numbers.capacity())) {
            throw new OutOfRangeException(
                    "water in the vessels",
                    water.textInBothSystems(),
                    "above " + Volume.ofSi(least).textInBothSystems() + " and below their capacity "
                            + capacity().textInBothSystems(),
                    "outside of it the gas does not set the pressure");
        }
        return AbsolutePressure.ofSi(numbers.pressureFor(water.si())).gauge(atmosphere);
    }

    /**
     * Which vessel begins to take water when, and when each membrane is at its stop.
     *
     * @return in the order of rising pressure
     */
    public List<VesselEvent> events() {
        return VesselEvent.of(this);
    }

    /**
     * The bank with one vessel shut off for service.
     *
     * @param name the vessel's name
     * @return the others
     * @throws OutOfRangeException if there is no vessel of this name or it is the only one
     */
    public VesselBank without(String name) {
        List<InstalledVessel> others =
                vessels.stream().filter(vessel -> !vessel.name().equals(name)).toList();
        if (others.size() == vessels.size()) {
            throw new OutOfRangeException(
                    "vessel to shut off",
                    name,
                    "one of " + vessels.stream().map(InstalledVessel::name).toList(),
                    "check the name");
        }
        if (others.isEmpty()) {
            throw new OutOfRangeException(
                    "vessel to shut off",
                    name,
                    "not the only one",
                    "shut the plant down and let it cool before its only vessel is shut off");
        }
        return new VesselBank(others, atmosphere);
    }

    /**
     * Who takes water when, as a table.
     *
     * @param system metric or inch-pound
     * @return a line for each event, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return VesselEvent.table(events(), system);
    }

    /** Absolute pressure in pascals. */
    double absolute(GaugePressure reference) {
        return reference.absolute(atmosphere).si();
    }

    BankNumbers numbers() {
        return new BankNumbers(
                vessels.stream().map(vessel -> vessel.group(atmosphere)).toList());
    }
}
