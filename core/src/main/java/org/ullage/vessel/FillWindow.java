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
        GasLaw.requireOrder(charge, charge, last);
        requireWithin("water to hold after filling", inVessel, nominal);
        GasLaw.requireNotNegative("expansion to come", toCome);
        double gas = nominal.si() * charge.si();
        return new FillWindow(
                AbsolutePressure.ofSi(gas / (nominal.si() - inVessel.si())),
                AbsolutePressure.ofSi(last.si() / (1 + toCome.si() * last.si() / gas)));
    }

    /**
     * Whether any fill pressure will do. A vessel is large enough exactly when this is so.
     *
     * @return whether the lowest pressure is not above the highest
     */
    public boolean isOpen() {
        return lowest.si() <= highest.si();
    }

    private static void requireWithin(String name, Volume volume, Volume nominal) {
        GasLaw.requireNotNegative(name, volume);
        if (volume.si() >= nominal.si()) {
            throw new OutOfRangeException(
                    name,
                    volume.textInBothSystems(),
                    "less than the nominal volume " + nominal.textInBothSystems(),
                    "take a larger vessel");
        }
    }
}
