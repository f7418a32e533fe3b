package org.ullage.vessel;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * The kind of a vessel and how much of its nominal volume it can fill with water. Immutable.
 *
 * @param kind the kind
 * @param acceptanceLimit the largest share of the nominal volume that may be water, or null if it is not known
 */
public record VesselType(VesselKind kind, @Nullable VolumeFraction acceptanceLimit) implements Serializable {

    private static final VolumeFraction WHOLE = VolumeFraction.percent(100);

    /**
     * Checks the limit.
     *
     * @param kind the kind
     * @param acceptanceLimit the largest share that may be water, or null if not known
     * @throws OutOfRangeException if the limit is zero
     */
    public VesselType {
        if (acceptanceLimit != null && acceptanceLimit.si() <= 0) {
            throw new OutOfRangeException(
                    "acceptance limit",
                    acceptanceLimit.text(Units.VOLUME_PERCENT),
                    "above 0 vol%",
                    "take the acceptance volume from the vessel's data plate and divide it by its nominal volume");
        }
    }

    /**
     * A diaphragm vessel that takes water into a part of its shell.
     *
     * @param acceptanceLimit acceptance volume divided by nominal volume, above 0 %
     * @return the type
     * @throws OutOfRangeException if the limit is zero
     */
    public static VesselType diaphragm(VolumeFraction acceptanceLimit) {
        return new VesselType(VesselKind.DIAPHRAGM, acceptanceLimit);
    }

    /**
     * A diaphragm vessel whose acceptance limit is not known yet. It is sized by the gas law alone and the answer warns that the
     * limit must be checked.
     *
     * @return the type
     */
    public static VesselType diaphragm() {
        return new VesselType(VesselKind.DIAPHRAGM, null);
    }

    /**
     * A bladder vessel, which can fill its whole shell with water.
     *
     * @return the type
     */
    public static VesselType bladder() {
        return new VesselType(VesselKind.BLADDER, WHOLE);
    }

    /**
     * A plain steel tank.
     *
     * @return the type
     */
    public static VesselType plainSteel() {
        return new VesselType(VesselKind.PLAIN_STEEL, WHOLE);
    }

    /**
     * An open tank.
     *
     * @return the type
     */
    public static VesselType open() {
        return new VesselType(VesselKind.OPEN, WHOLE);
    }

    /**
     * The type for a kind, with nothing more known about it.
     *
     * @param kind the kind
     * @return the type; a diaphragm vessel's acceptance limit is then unknown
     */
    public static VesselType of(VesselKind kind) {
        return new VesselType(kind, kind == VesselKind.DIAPHRAGM ? null : WHOLE);
    }
}
