package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * What was found and left at one visit. Immutable; {@link #of} begins one.
 *
 * @param date day of the visit
 * @param by who was there, with the company
 * @param arrival readings on arrival, or null if not recorded
 * @param charges the gas charges, each vessel once
 * @param makeUpWater water added since the last visit, by the meter, or null if not recorded
 * @param sample sample of the fluid, or null if not recorded
 * @param relief the relief valve, or null if not recorded
 * @param findings faults, their causes and the cure, or null if not recorded
 * @param changes changes to the system since the last visit, or null if not recorded
 * @param fluidTreatment what was done to the fluid at this visit, after the sample was taken, or null if not recorded
 * @param replacements vessels that were replaced
 * @param remarks anything else, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record VisitRecord(
        RecordDate date,
        String by,
        @Nullable ArrivalNote arrival,
        List<ChargeCheck> charges,
        @Nullable Volume makeUpWater,
        @Nullable SampleNote sample,
        @Nullable ReliefNote relief,
        @Nullable String findings,
        @Nullable String changes,
        @Nullable String fluidTreatment,
        List<Replacement> replacements,
        @Nullable String remarks,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param date day of the visit
     * @param by who was there, with the company
     * @param arrival readings on arrival, or null if not recorded
     * @param charges the gas charges, each vessel once
     * @param makeUpWater water added since the last visit, by the meter, or null if not recorded
     * @param sample sample of the fluid, or null if not recorded
     * @param relief the relief valve, or null if not recorded
     * @param findings faults, their causes and the cure, or null if not recorded
     * @param changes changes to the system since the last visit, or null if not recorded
     * @param fluidTreatment what was done to the fluid at this visit, after the sample was taken, or null if not recorded
     * @param replacements vessels that were replaced
     * @param remarks anything else, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if date or by whom is missing
     * @throws OutOfRangeException if a vessel was checked twice, or the make-up water is negative
     */
    public VisitRecord {
        Kept.present("date", date, "a visit");
        by = Kept.required("by whom", by, "a visit");
        charges = Kept.list("charges", charges);
        findings = Kept.text(findings);
        changes = Kept.text(changes);
        fluidTreatment = Kept.text(fluidTreatment);
        replacements = Kept.list("replacements", replacements);
        remarks = Kept.text(remarks);
        unknownFields = Kept.fields(unknownFields);
        Kept.notNegative("make-up water", makeUpWater);
        VesselNames.requireOnce(charges);
    }

    /**
     * Begins a visit.
     *
     * @param date its day
     * @param by who was there
     * @return a builder for the rest
     */
    public static VisitRecordBuilder of(LocalDate date, String by) {
        return new VisitRecordBuilder(new RecordDate(date), by);
    }

    /**
     * A copy to change.
     *
     * @return a builder that holds everything of this one
     */
    public VisitRecordBuilder toBuilder() {
        return new VisitRecordBuilder(this);
    }

    /**
     * The visit for people; what is not recorded is named as such.
     *
     * @param system metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return VisitText.of(this, system);
    }
}
