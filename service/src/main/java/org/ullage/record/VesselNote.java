package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/**
 * One vessel as it was installed. Immutable; {@link #of} begins one.
 *
 * @param id name of the vessel in this record
 * @param kind its kind, or null if not recorded
 * @param nominal nominal volume, or null if not recorded
 * @param rating highest pressure it may see, or null if not recorded
 * @param maximumTemperature highest temperature its membrane may see, or null if not recorded
 * @param serial serial number and whatever else its plate says, or null if not recorded
 * @param support what carries it, or null if not recorded
 * @param connection where it is connected to the loop, or null if not recorded
 * @param lockableValve whether a valve that can be locked open and a drain part it from the loop, or null if not recorded
 * @param charge its gas charge, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record VesselNote(
        String id,
        @Nullable VesselKind kind,
        @Nullable Volume nominal,
        @Nullable GaugePressure rating,
        @Nullable Temperature maximumTemperature,
        @Nullable String serial,
        @Nullable SupportNote support,
        @Nullable String connection,
        @Nullable Boolean lockableValve,
        @Nullable ChargeNote charge,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param id name of the vessel in this record
     * @param kind its kind, or null if not recorded
     * @param nominal nominal volume, or null if not recorded
     * @param rating highest pressure it may see, or null if not recorded
     * @param maximumTemperature highest temperature its membrane may see, or null if not recorded
     * @param serial serial number and whatever else its plate says, or null if not recorded
     * @param support what carries it, or null if not recorded
     * @param connection where it is connected to the loop, or null if not recorded
     * @param lockableValve whether a valve that can be locked open and a drain part it from the loop, or null if not recorded
     * @param charge its gas charge, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if name of the vessel is missing
     * @throws OutOfRangeException if the nominal volume or the rating is not above zero
     */
    public VesselNote {
        id = Kept.required("name of the vessel", id, "a vessel");
        serial = Kept.text(serial);
        connection = Kept.text(connection);
        unknownFields = Kept.fields(unknownFields);
        Kept.aboveZero("nominal volume", nominal);
        Kept.aboveZero("rating", rating);
    }

    /**
     * Begins a vessel.
     *
     * @param id its name in this record, such as {@code V1}
     * @return a builder for the rest
     */
    public static VesselNoteBuilder of(String id) {
        return new VesselNoteBuilder(id);
    }

    /**
     * A copy to change.
     *
     * @return a builder that holds everything of this one
     */
    public VesselNoteBuilder toBuilder() {
        return new VesselNoteBuilder(this);
    }
}
