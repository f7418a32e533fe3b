package org.ullage.pressure;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/**
 * What a loop is left with after its relief valve has lifted while hot and closed again below its setting: why a valve that wept once
 * leaves a cold loop low. Immutable.
 *
 * <p>With nominal volume V_n, charge p_0, cold pressure p_i, expansion V_e and the pressure p_r at which the valve closes (absolute, at
 * the vessel): the vessel holds V_n (1 - p_0/p_r) when the valve closes; the loop takes V_e back as it cools.
 *
 * @param lost water that left through the valve
 * @param cold pressure at the vessel when the loop is cold again; null if the vessel is then empty and the pressure falls below its
 *     charge, how far depends on the elasticity of the loop
 * @param missing water the cold loop lacks even with an empty vessel, zero if it lacks none
 */
public record AfterLift(Volume lost, @Nullable AbsolutePressure cold, Volume missing) implements Serializable {

    /**
     * Works out what is left.
     *
     * @param nominal V_n
     * @param charge p_0
     * @param coldBefore p_i
     * @param expansion V_e
     * @param closing p_r, at the vessel
     * @return what the loop is left with
     * @throws OutOfRangeException if the pressures are out of order or a volume is negative
     */
    public static AfterLift of(
            Volume nominal,
            AbsolutePressure charge,
            AbsolutePressure coldBefore,
            Volume expansion,
            AbsolutePressure closing) {
        GasLaw.requireOrder(charge, coldBefore, closing);
        requireNotNegative(expansion);
        double before = GasLaw.waterInVessel(nominal, charge, coldBefore).si();
        double atClosing = GasLaw.waterInVessel(nominal, charge, closing).si();
        double lost = Math.max(0, before + expansion.si() - atClosing);
        double after = before - lost;
        if (after < 0) {
            return new AfterLift(Volume.ofSi(lost), null, Volume.ofSi(-after));
        }
        double gas = nominal.si() - after;
        return new AfterLift(
                Volume.ofSi(lost), AbsolutePressure.ofSi(charge.si() * nominal.si() / gas), Volume.litres(0));
    }

    private static void requireNotNegative(Volume expansion) {
        if (expansion.si() < 0) {
            throw new OutOfRangeException(
                    "expansion",
                    expansion.textInBothSystems(),
                    "zero or more",
                    "give what the loop expands by on its way from cold to hot");
        }
    }
}
