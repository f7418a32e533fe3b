package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;

/**
 * Where the vessel stands, as a file has it. Immutable.
 *
 * @param valveAbove height of the relief valve above the vessel, negative if below, or null if not recorded
 * @param pumpAtTop pressure the pump adds at the highest point, or null if not recorded
 * @param pumpAtValve pressure the pump adds at the relief valve, or null if not recorded
 * @param weakestRating rating of the part that limits the pressure, or null if not recorded
 * @param weakestAbove height of that part above the vessel, negative if below, or null if not recorded
 * @param pumpAtWeakest pressure the pump adds there, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record PlaceRecord(
        @Nullable Length valveAbove,
        @Nullable PressureDifference pumpAtTop,
        @Nullable PressureDifference pumpAtValve,
        @Nullable GaugePressure weakestRating,
        @Nullable Length weakestAbove,
        @Nullable PressureDifference pumpAtWeakest,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param valveAbove height of the relief valve above the vessel, negative if below, or null if not recorded
     * @param pumpAtTop pressure the pump adds at the highest point, or null if not recorded
     * @param pumpAtValve pressure the pump adds at the relief valve, or null if not recorded
     * @param weakestRating rating of the part that limits the pressure, or null if not recorded
     * @param weakestAbove height of that part above the vessel, negative if below, or null if not recorded
     * @param pumpAtWeakest pressure the pump adds there, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public PlaceRecord {
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param valveAbove height of the relief valve above the vessel, negative if below, or null if not recorded
     * @param pumpAtTop pressure the pump adds at the highest point, or null if not recorded
     * @param pumpAtValve pressure the pump adds at the relief valve, or null if not recorded
     * @param weakestRating rating of the part that limits the pressure, or null if not recorded
     * @param weakestAbove height of that part above the vessel, negative if below, or null if not recorded
     * @param pumpAtWeakest pressure the pump adds there, or null if not recorded
     */
    public PlaceRecord(
            @Nullable Length valveAbove,
            @Nullable PressureDifference pumpAtTop,
            @Nullable PressureDifference pumpAtValve,
            @Nullable GaugePressure weakestRating,
            @Nullable Length weakestAbove,
            @Nullable PressureDifference pumpAtWeakest) {
        this(valveAbove, pumpAtTop, pumpAtValve, weakestRating, weakestAbove, pumpAtWeakest, Map.of());
    }

    /**
     * Takes a place.
     *
     * @param place where the vessel stands
     * @return the record, or null for a vessel at the relief valve with nothing else to say
     */
    static @Nullable PlaceRecord of(VesselPlace place) {
        if (place.equals(VesselPlace.AT_VALVE)) {
            return null;
        }
        VesselPlace.WeakestPart part = place.weakest();
        return new PlaceRecord(
                place.valveAbove(),
                place.pumpAtTop(),
                place.pumpAtValve(),
                part == null ? null : part.rating(),
                part == null ? null : part.above(),
                part == null ? null : part.pumpAtPart());
    }

    /** The place; what is not recorded is as for a vessel at the relief valve. */
    VesselPlace place() {
        VesselPlace base = VesselPlace.AT_VALVE;
        VesselPlace.WeakestPart part = weakestRating == null
                ? null
                : new VesselPlace.WeakestPart(
                        weakestRating, or(weakestAbove, base.valveAbove()), or(pumpAtWeakest, base.pumpAtTop()));
        return new VesselPlace(
                or(valveAbove, base.valveAbove()),
                or(pumpAtTop, base.pumpAtTop()),
                or(pumpAtValve, base.pumpAtValve()),
                part);
    }

    private static <Q> Q or(@Nullable Q recorded, Q otherwise) {
        return recorded == null ? otherwise : recorded;
    }
}
