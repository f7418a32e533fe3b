package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * What the next person must know about a loop and its vessels: what was installed, charged, filled and tested, when and by whom. Immutable;
 * {@link #of} begins one.
 *
 * @param installation name of the installation
 * @param place where it is, or null if not recorded
 * @param loop the loop, or null if not recorded
 * @param vessels its vessels, at least one, each with a name of its own
 * @param fill the filling, or null if not recorded
 * @param reliefSetting setting of the relief valve, or null if not recorded
 * @param reliefLiftedAt pressure at which the relief valve lifted when it was tried, or null if not recorded
 * @param staticHead height of the highest point of the loop above the vessel, or null if not recorded
 * @param sizing how the vessel was sized, or null if not recorded
 * @param leakTest the test for tightness, or null if not recorded
 * @param fillWater the water it was filled with, or null if not recorded
 * @param date day of the commissioning
 * @param by who did it, with the company
 * @param witnessedBy who saw it done, or null if not recorded
 * @param remarks anything else, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record CommissioningNote(
        String installation,
        @Nullable String place,
        @Nullable LoopNote loop,
        List<VesselNote> vessels,
        @Nullable FillNote fill,
        @Nullable GaugePressure reliefSetting,
        @Nullable GaugePressure reliefLiftedAt,
        @Nullable Length staticHead,
        @Nullable SizingNote sizing,
        @Nullable LeakTest leakTest,
        @Nullable FillWaterNote fillWater,
        RecordDate date,
        String by,
        @Nullable String witnessedBy,
        @Nullable String remarks,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param installation name of the installation
     * @param place where it is, or null if not recorded
     * @param loop the loop, or null if not recorded
     * @param vessels its vessels, at least one, each with a name of its own
     * @param fill the filling, or null if not recorded
     * @param reliefSetting setting of the relief valve, or null if not recorded
     * @param reliefLiftedAt pressure at which the relief valve lifted when it was tried, or null if not recorded
     * @param staticHead height of the highest point of the loop above the vessel, or null if not recorded
     * @param sizing how the vessel was sized, or null if not recorded
     * @param leakTest the test for tightness, or null if not recorded
     * @param fillWater the water it was filled with, or null if not recorded
     * @param date day of the commissioning
     * @param by who did it, with the company
     * @param witnessedBy who saw it done, or null if not recorded
     * @param remarks anything else, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if installation or date or by whom is missing, or there is no vessel
     * @throws OutOfRangeException if two vessels have the same name, or the relief setting is not above zero
     */
    public CommissioningNote {
        installation = Kept.required("installation", installation, "a commissioning note");
        place = Kept.text(place);
        vessels = Kept.list("vessels", vessels);
        Kept.present("date", date, "a commissioning note");
        by = Kept.required("by whom", by, "a commissioning note");
        witnessedBy = Kept.text(witnessedBy);
        remarks = Kept.text(remarks);
        unknownFields = Kept.fields(unknownFields);
        Kept.aboveZero("relief setting", reliefSetting);
        VesselNames.requireOwn(vessels);
    }

    /**
     * Begins a note.
     *
     * @param installation name of the installation
     * @param date day of the commissioning
     * @param by who did it
     * @param vessel a vessel; add others to the builder
     * @return a builder for the rest
     */
    public static CommissioningNoteBuilder of(String installation, LocalDate date, String by, VesselNote vessel) {
        return new CommissioningNoteBuilder(installation, new RecordDate(date), by).vessel(vessel);
    }

    /**
     * A copy to change.
     *
     * @return a builder that holds everything of this one
     */
    public CommissioningNoteBuilder toBuilder() {
        return new CommissioningNoteBuilder(this);
    }

    /**
     * The note for people; what is not recorded is named as such.
     *
     * @param system metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return CommissioningText.of(this, system);
    }
}
