package org.ullage.vessel;

import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/**
 * The isothermal ideal gas law of a closed vessel.
 *
 * <p>Symbols, all pressures absolute: V_n nominal (shell) volume; p_0 gas charge with the water side empty; p_i pressure when
 * cold; p_f final pressure when hot; V_x water that enters between p_i and p_f. The gas fills V_n p_0 / p once p is above p_0,
 * so
 *
 * <pre>V_x = V_n p_0 (1/p_i - 1/p_f)</pre>
 *
 * <p>Every method on doubles takes one consistent set of units (volumes alike, pressures alike and absolute) and is the
 * calculation path; the typed ones add the checks for callers.
 */
public final class GasLaw {

    /** Boyle's law for the gas cushion, re-arranged here. */
    public static final Source SOURCE =
            Source.computed("Boyle's law, isothermal ideal gas", "V_n p_0 = V_gas p, re-arranged for the vessel");

    /** Pressures this close, relatively, are the same pressure written twice, once as gauge and once as absolute. */
    private static final double ROUNDING = 1e-9;

    private GasLaw() {}

    /**
     * Nominal volume for each unit of water that enters between cold and final pressure: 1 / [p_0 (1/p_i - 1/p_f)].
     *
     * @param charge p_0
     * @param cold p_i
     * @param last p_f
     * @return vessel volume per volume of water taken in
     */
    public static double volumePerWater(double charge, double cold, double last) {
        return volumePerWater(charge, cold, last, GasTemperatures.ISOTHERMAL);
    }

    /**
     * Nominal volume for each unit of water when the gas has temperatures of its own: 1 / (p_0 g_i / p_i - p_0 g_f / p_f), g being the
     * ratio of the gas temperature to the one at which it was charged.
     *
     * @param charge p_0 as it was set
     * @param cold p_i
     * @param last p_f
     * @param gas the temperatures of the gas
     * @return vessel volume per volume of water taken in; not above zero if the gas warms up so much that no water fits
     */
    public static double volumePerWater(double charge, double cold, double last, GasTemperatures gas) {
        return 1 / (charge * gas.coldRatio() / cold - charge * gas.hotRatio() / last);
    }

    /**
     * Water in the vessel at a pressure, as a share of its nominal volume: 1 - p_0/p, none below the charge.
     *
     * @param charge p_0
     * @param pressure p
     * @return from 0 up to, not including, 1
     */
    public static double waterShare(double charge, double pressure) {
        return Math.max(0, 1 - charge / pressure);
    }

    /**
     * Nominal volume that takes the water in.
     *
     * @param water V_x, zero or more
     * @param charge p_0
     * @param cold p_i, at or above the charge
     * @param last p_f, above the cold pressure
     * @return V_n
     * @throws OutOfRangeException if the pressures are out of order or the water is negative
     */
    public static Volume nominalVolume(
            Volume water, AbsolutePressure charge, AbsolutePressure cold, AbsolutePressure last) {
        requireOrder(charge, cold, last);
        requireNotNegative("water to take in", water);
        return Volume.ofSi(water.si() * volumePerWater(charge.si(), cold.si(), last.si()));
    }

    /**
     * Pressure that a given vessel reaches when it takes the water in: 1 / (1/p_i - V_x / (V_n p_0)).
     *
     * @param nominal V_n, above zero
     * @param water V_x, zero or more
     * @param charge p_0
     * @param cold p_i, at or above the charge
     * @return p_f
     * @throws OutOfRangeException if charge and cold pressure are out of order or the water does not fit at any pressure
     */
    public static AbsolutePressure finalPressure(
            Volume nominal, Volume water, AbsolutePressure charge, AbsolutePressure cold) {
        requireChargeNotAboveCold(charge, cold);
        requireNotNegative("water to take in", water);
        double gasAtCold = nominal.si() * charge.si() / cold.si();
        if (!(water.si() < gasAtCold)) {
            throw new OutOfRangeException(
                    "water to take in",
                    water.textInBothSystems(),
                    "less than the gas space at the cold pressure, "
                            + Volume.ofSi(gasAtCold).textInBothSystems(),
                    "the vessel is too small at any pressure: take a larger one");
        }
        return AbsolutePressure.ofSi(cold.si() * gasAtCold / (gasAtCold - water.si()));
    }

    /**
     * Pressure of a vessel that holds water: p_0 V_n / (V_n - V_w).
     *
     * @param nominal V_n, above zero
     * @param charge p_0
     * @param water V_w, zero or more and less than V_n
     * @return p
     * @throws OutOfRangeException if the water is negative or leaves no room for gas
     */
    public static AbsolutePressure pressureHolding(Volume nominal, AbsolutePressure charge, Volume water) {
        requireNotNegative("water to hold in the vessel", water);
        if (water.si() >= nominal.si()) {
            throw new OutOfRangeException(
                    "water to hold in the vessel",
                    water.textInBothSystems(),
                    "less than the nominal volume " + nominal.textInBothSystems(),
                    "take a larger vessel");
        }
        return AbsolutePressure.ofSi(charge.si() * nominal.si() / (nominal.si() - water.si()));
    }

    /**
     * Water in a vessel at a pressure: V_n (1 - p_0/p), none below the charge.
     *
     * @param nominal V_n, zero or more
     * @param charge p_0
     * @param pressure p
     * @return the volume of water
     * @throws OutOfRangeException if the nominal volume is negative
     */
    public static Volume waterInVessel(Volume nominal, AbsolutePressure charge, AbsolutePressure pressure) {
        requireNotNegative("nominal volume", nominal);
        return Volume.ofSi(nominal.si() * waterShare(charge.si(), pressure.si()));
    }

    /**
     * The charge of an empty vessel at another temperature of its gas, which keeps its volume: p_2 = p_1 T_2 / T_1.
     *
     * @param charge p_1
     * @param from T_1, temperature of the gas at which the charge is known
     * @param to T_2, temperature of the gas at which it is wanted
     * @return p_2
     */
    public static AbsolutePressure chargeAt(AbsolutePressure charge, Temperature from, Temperature to) {
        return AbsolutePressure.ofSi(charge.si() * to.si() / from.si());
    }

    /**
     * Refuses a vessel without volume.
     *
     * @param nominal nominal volume
     * @throws OutOfRangeException if it is not above zero
     */
    public static void requireNominal(Volume nominal) {
        if (nominal.si() <= 0) {
            throw new OutOfRangeException(
                    "nominal volume",
                    nominal.textInBothSystems(),
                    "above zero",
                    "take it from the vessel's data plate");
        }
    }

    /**
     * Refuses pressures that are out of order.
     *
     * @param charge p_0
     * @param cold p_i
     * @param last p_f
     * @throws OutOfRangeException if the charge is above the cold pressure, or the cold pressure is not below the final one
     */
    public static void requireOrder(AbsolutePressure charge, AbsolutePressure cold, AbsolutePressure last) {
        requireChargeNotAboveCold(charge, cold);
        if (cold.si() >= last.si()) {
            throw new OutOfRangeException(
                    "final pressure",
                    last.textInBothSystems(),
                    "above the cold pressure " + cold.textInBothSystems(),
                    "probably gauge and absolute pressure were mixed up, the two were swapped, or the static head leaves no"
                            + " room below the relief setting");
        }
    }

    private static void requireChargeNotAboveCold(AbsolutePressure charge, AbsolutePressure cold) {
        if (isAbove(charge.si(), cold.si())) {
            throw new OutOfRangeException(
                    "gas charge",
                    charge.textInBothSystems(),
                    "at or below the cold pressure " + cold.textInBothSystems(),
                    "a higher charge keeps the vessel empty when cold; probably gauge and absolute pressure were mixed up");
        }
    }

    /**
     * Whether a pressure is above another by more than rounding.
     *
     * @param pressure a pressure
     * @param limit a pressure counted from the same zero
     * @return whether it is above the limit
     */
    public static boolean isAbove(double pressure, double limit) {
        return pressure > limit * (1 + ROUNDING);
    }

    static void requireNotNegative(String name, Volume volume) {
        if (volume.si() < 0) {
            throw new OutOfRangeException(
                    name,
                    volume.textInBothSystems(),
                    "zero or more",
                    "check the order of the temperatures and the sign");
        }
    }
}
