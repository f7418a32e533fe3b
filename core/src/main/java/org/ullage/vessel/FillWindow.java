package org.ullage.vessel;

import java.io.Serializable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * The pressures between which a loop with a given vessel may be filled. Below the lowest the vessel does not hold its reserve once
 * the loop has cooled down; above the highest it cannot take the expansion without passing the final pressure. Immutable.
 *
 * <p>With nominal volume V_n, charge p_0, final pressure p_f, reserve V_wr, and from the temperature of the filling the
 * contraction V_c down to the coldest and the expansion V_e up to the hottest state (all pressures absolute):
 *
 * <pre>
 * lowest  = p_0 V_n / (V_n - V_wr - V_c)
 * highest = p_f / (1 + V_e p_f / (V_n p_0))
 * </pre>
 *
 * <p>A gas that is warmer hot than at the filling has a charge of its own for each, p_0 and p_0h:
 *
 * <pre>highest = p_0 V_n / (V_n p_0h / p_f + V_e)</pre>
 *
 * @param lowest lowest fill pressure
 * @param highest highest fill pressure
 */
public record FillWindow(AbsolutePressure lowest, AbsolutePressure highest) implements Serializable {

    /**
     * The window of a vessel. The loop may be filled at any temperature: filled cold there is no contraction to come; filled warm
     * the expansion is only the part still to come and the vessel must hold the contraction as well.
     *
     * @param nominal V_n, above zero
     * @param charge p_0
     * @param last p_f, above the charge
     * @param inVessel V_wr + V_c: water the vessel must hold after filling, zero or more and less than V_n
     * @param toCome V_e: expansion from the temperature of the filling to the hottest state, zero or more
     * @return the window; its lowest pressure may be above its highest, see {@link #isOpen()}
     * @throws OutOfRangeException if a volume is out of range or the final pressure is not above the charge
     */
    public static FillWindow of(
            Volume nominal, AbsolutePressure charge, AbsolutePressure last, Volume inVessel, Volume toCome) {
        return of(nominal, charge, charge, last, inVessel, toCome);
    }

    /**
     * The window of a vessel whose gas is not as warm at the filling as it is with the loop hot.
     *
     * @param nominal V_n, above zero
     * @param charge p_0, what the charge is at the gas temperature of the filling
     * @param hotCharge p_0h, what the charge is at the gas temperature with the loop hot
     * @param last p_f, above the hot charge
     * @param inVessel V_wr + V_c: water the vessel must hold after filling, zero or more and less than V_n
     * @param toCome V_e: expansion from the temperature of the filling to the hottest state, zero or more
     * @return the window; its lowest pressure may be above its highest, see {@link #isOpen()}
     * @throws OutOfRangeException if a volume is out of range or the final pressure is not above the hot charge
     */
    public static FillWindow of(
            Volume nominal,
            AbsolutePressure charge,
            AbsolutePressure hotCharge,
            AbsolutePressure last,
            Volume inVessel,
            Volume toCome) {
        GasLaw.requireOrder(hotCharge, hotCharge, last);
        GasLaw.requireNotNegative("expansion to come", toCome);
        double gas = nominal.si() * hotCharge.si();
        double highest = last.si() / (1 + toCome.si() * last.si() / gas);
        return new FillWindow(
                GasLaw.pressureHolding(nominal, charge, inVessel),
                AbsolutePressure.ofSi(highest * charge.si() / hotCharge.si()));
    }

    /**
     * Whether any fill pressure will do. A vessel is large enough exactly when this is so.
     *
     * @return whether the lowest pressure is not above the highest
     */
    public boolean isOpen() {
        return lowest.si() <= highest.si();
    }
}
