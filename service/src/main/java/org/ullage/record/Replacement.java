package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;

/**
 * A vessel that took the place of another. The new one may keep the name. Immutable.
 *
 * @param vessel name of the vessel that was taken out
 * @param fitted the vessel that was fitted
 * @param reason why, or null if not recorded
 * @param isolation how the old one was isolated and drained, or null if not recorded
 * @param liftingAid how the weight was handled, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record Replacement(
        String vessel,
        VesselNote fitted,
        @Nullable String reason,
        @Nullable String isolation,
        @Nullable String liftingAid,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param vessel name of the vessel that was taken out
     * @param fitted the vessel that was fitted
     * @param reason why, or null if not recorded
     * @param isolation how the old one was isolated and drained, or null if not recorded
     * @param liftingAid how the weight was handled, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if name of the old vessel or fitted vessel is missing
     */
    public Replacement {
        vessel = Kept.required("name of the old vessel", vessel, "a replacement");
        Kept.present("fitted vessel", fitted, "a replacement");
        reason = Kept.text(reason);
        isolation = Kept.text(isolation);
        liftingAid = Kept.text(liftingAid);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param vessel name of the vessel that was taken out
     * @param fitted the vessel that was fitted
     * @param reason why, or null if not recorded
     * @param isolation how the old one was isolated and drained, or null if not recorded
     * @param liftingAid how the weight was handled, or null if not recorded
     * @throws MissingInputException if name of the old vessel or fitted vessel is missing
     */
    public Replacement(
            String vessel,
            VesselNote fitted,
            @Nullable String reason,
            @Nullable String isolation,
            @Nullable String liftingAid) {
        this(vessel, fitted, reason, isolation, liftingAid, Map.of());
    }
}
