package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Volume;

/** Fills in a visit step by step. Not for many threads. Begin one with {@link VisitRecord#of} or {@link VisitRecord#toBuilder}. */
public final class VisitRecordBuilder {

    private final RecordDate date;
    private final String by;
    private @Nullable ArrivalNote arrival;
    private final List<ChargeCheck> charges = new ArrayList<>();
    private @Nullable Volume makeUpWater;
    private @Nullable SampleNote sample;
    private @Nullable ReliefNote relief;
    private @Nullable String findings;
    private @Nullable String changes;
    private @Nullable String fluidTreatment;
    private final List<Replacement> replacements = new ArrayList<>();
    private @Nullable String remarks;
    private Map<String, @Nullable Object> unknownFields = Map.of();

    VisitRecordBuilder(RecordDate date, String by) {
        this.date = date;
        this.by = by;
    }

    VisitRecordBuilder(VisitRecord begun) {
        this.date = begun.date();
        this.by = begun.by();
        this.arrival = begun.arrival();
        this.charges.addAll(begun.charges());
        this.makeUpWater = begun.makeUpWater();
        this.sample = begun.sample();
        this.relief = begun.relief();
        this.findings = begun.findings();
        this.changes = begun.changes();
        this.fluidTreatment = begun.fluidTreatment();
        this.replacements.addAll(begun.replacements());
        this.remarks = begun.remarks();
        this.unknownFields = begun.unknownFields();
    }

    /**
     * Readings on arrival.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder arrival(@Nullable ArrivalNote value) {
        arrival = value;
        return this;
    }

    /**
     * Adds a charge.
     *
     * @param one the charge
     * @return this builder
     */
    public VisitRecordBuilder charge(ChargeCheck one) {
        charges.add(one);
        return this;
    }

    /**
     * Water added since the last visit, by the meter.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder makeUpWater(@Nullable Volume value) {
        makeUpWater = value;
        return this;
    }

    /**
     * Sample of the fluid.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder sample(@Nullable SampleNote value) {
        sample = value;
        return this;
    }

    /**
     * The relief valve.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder relief(@Nullable ReliefNote value) {
        relief = value;
        return this;
    }

    /**
     * Faults, their causes and the cure.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder findings(@Nullable String value) {
        findings = value;
        return this;
    }

    /**
     * Changes to the system since the last visit.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder changes(@Nullable String value) {
        changes = value;
        return this;
    }

    /**
     * What was done to the fluid at this visit, after the sample was taken.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder fluidTreatment(@Nullable String value) {
        fluidTreatment = value;
        return this;
    }

    /**
     * Adds a replacement.
     *
     * @param one the replacement
     * @return this builder
     */
    public VisitRecordBuilder replacement(Replacement one) {
        replacements.add(one);
        return this;
    }

    /**
     * Anything else.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VisitRecordBuilder remarks(@Nullable String value) {
        remarks = value;
        return this;
    }

    /**
     * Closes the record.
     *
     * @return a visit
     * @throws IllegalArgumentException if something in it is missing or out of range
     */
    public VisitRecord build() {
        return new VisitRecord(
                date,
                by,
                arrival,
                charges,
                makeUpWater,
                sample,
                relief,
                findings,
                changes,
                fluidTreatment,
                replacements,
                remarks,
                unknownFields);
    }
}
