package org.ullage.operation;

import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * A gas cushion between two readings. The methods on doubles are for those who ask very often: each is one line of Boyle's law,
 * allocates nothing and takes absolute pressures in one unit and volumes in one unit.
 */
public final class GasCushion {

    private GasCushion() {}

    /**
     * Pressure after water has come in: p_1 V_g / (V_g - V_x).
     *
     * @param gas V_g, volume of the gas at the first pressure
     * @param first p_1
     * @param water V_x, water that came in, negative if it left; less than the gas volume
     * @return the pressure
     */
    public static double pressure(double gas, double first, double water) {
        return first * gas / (gas - water);
    }

    /**
     * Gas that explains two pressures: V_x / (1 - p_1 / p_2), at the first of them.
     *
     * @param water V_x, water that came in between
     * @param first p_1
     * @param second p_2, not equal to the first
     * @return volume of the gas at the first pressure
     */
    public static double gas(double water, double first, double second) {
        return water / (1 - first / second);
    }

    /**
     * Gas of a charged vessel at a pressure: V_n p_0 / p, the whole shell below the charge.
     *
     * @param nominal V_n
     * @param charge p_0
     * @param pressure p
     * @return volume of the gas
     */
    public static double gasOf(double nominal, double charge, double pressure) {
        return nominal * Math.min(1, charge / pressure);
    }

    /**
     * All the gas in vessels and loop that explains a second reading, when nothing was filled, vented or lost in between. Held
     * against the gas of sound vessels it tells what was lost. Direct, without a search. Water that stands where gas was is taken not
     * to be compressed, which is worth parts in ten thousand.
     *
     * @param curve the loop by its first reading
     * @param second a reading at another temperature
     * @return volume of the gas at the first reading, as if all of it were at the reference point
     * @throws OutOfRangeException if the pressure did not follow the temperature
     */
    public static Volume explaining(OperatingCurve curve, Reading second) {
        double pascals = curve.inUse().bank().absolute(second.pressure());
        LoopBalance balance = curve.numbers().loop();
        double first = curve.inUse().bank().absolute(curve.inUse().known().pressure());
        double before = curve.numbers().bank().water(first);
        double taken = balance.demand(second.temperature().si(), pascals) - before;
        double gas = gas(taken, first, pascals);
        if (!(gas > 0 && gas <= Double.MAX_VALUE)) {
            throw new OutOfRangeException(
                    "second reading",
                    second.pressure().textInBothSystems() + " at "
                            + second.temperature().textInBothSystems(),
                    "higher in pressure than the first when the loop has expanded, lower when it has shrunk",
                    "check both readings; water was filled or lost in between");
        }
        return Volume.ofSi(gas);
    }
}
