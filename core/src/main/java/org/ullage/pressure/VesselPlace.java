package org.ullage.pressure;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;

/**
 * Where the vessel stands in the loop: how far the relief valve and the weakest part are above it, and what the running pump adds to
 * the pressure at the top, at the valve and at the weakest part. The vessel's connection is the point where the pump changes
 * nothing; with the vessel on the suction side the pump adds pressure elsewhere, on the discharge side it takes pressure away
 * (negative). Immutable; {@link #AT_VALVE} is the default.
 *
 * @param valveAbove height of the relief valve above the vessel, negative if below
 * @param pumpAtTop pressure the pump adds at the highest point
 * @param pumpAtValve pressure the pump adds at the relief valve
 * @param weakest the part with the lowest margin to its rating, or null if the relief setting protects every part
 */
public record VesselPlace(
        Length valveAbove,
        PressureDifference pumpAtTop,
        PressureDifference pumpAtValve,
        @Nullable WeakestPart weakest) implements Serializable {

    private static final PressureDifference NOTHING = PressureDifference.bar(0);

    /** Relief valve at the level of the vessel, no effect of the pump, no part weaker than the relief setting allows. */
    public static final VesselPlace AT_VALVE = new VesselPlace(Length.metres(0), NOTHING, NOTHING, null);

    /**
     * The part that limits the pressure.
     *
     * @param rating highest gauge pressure it may see
     * @param above its height above the vessel, negative if below
     * @param pumpAtPart pressure the pump adds there
     */
    public record WeakestPart(GaugePressure rating, Length above, PressureDifference pumpAtPart)
            implements Serializable {

        /**
         * Highest gauge pressure at the vessel that keeps the part within its rating, pump running or not.
         *
         * @return pascals
         * @throws OutOfRangeException if height or pressures are too large for a finite number
         */
        public double vesselPascals() {
            double pascals = rating.si() + StaticHead.pascals(above.si()) - Math.max(0, pumpAtPart.si());
            return GaugePressure.ofSi(pascals).si();
        }
    }

    /**
     * The same place with the relief valve at another height.
     *
     * @param height above the vessel, negative if below
     * @return a copy
     */
    public VesselPlace withValveAbove(Length height) {
        return new VesselPlace(height, pumpAtTop, pumpAtValve, weakest);
    }

    /**
     * The same place with the pump's effect at the highest point.
     *
     * @param added negative if the pump takes pressure away
     * @return a copy
     */
    public VesselPlace withPumpAtTop(PressureDifference added) {
        return new VesselPlace(valveAbove, added, pumpAtValve, weakest);
    }

    /**
     * The same place with the pump's effect at the relief valve.
     *
     * @param added negative if the pump takes pressure away
     * @return a copy
     */
    public VesselPlace withPumpAtValve(PressureDifference added) {
        return new VesselPlace(valveAbove, pumpAtTop, added, weakest);
    }

    /**
     * The same place with a part that limits the pressure.
     *
     * @param part its rating, height and pump effect
     * @return a copy
     */
    public VesselPlace withWeakest(WeakestPart part) {
        return new VesselPlace(valveAbove, pumpAtTop, pumpAtValve, part);
    }

    /**
     * What the cold pressure must be raised by, because the running pump takes pressure away at the highest point.
     *
     * @return pascals, zero or more
     */
    public double coldRaisePascals() {
        return Math.max(0, -pumpAtTop.si());
    }

    /**
     * What a pressure at the relief valve is at the vessel: the column between them added, the pump's addition at the valve taken
     * off, pump running or not.
     *
     * @return pascals to add
     * @throws OutOfRangeException if the height is too large for a finite number
     */
    public double valveToVesselPascals() {
        double pascals = StaticHead.pascals(valveAbove.si()) - Math.max(0, pumpAtValve.si());
        return PressureDifference.ofSi(pascals).si();
    }
}
