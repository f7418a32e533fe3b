package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;

/**
 * Fills in a commissioning note step by step. Not for many threads. Begin one with {@link CommissioningNote#of} or {@link
 * CommissioningNote#toBuilder}.
 */
public final class CommissioningNoteBuilder {

    private final String installation;
    private @Nullable String place;
    private @Nullable LoopNote loop;
    private final List<VesselNote> vessels = new ArrayList<>();
    private @Nullable FillNote fill;
    private @Nullable GaugePressure reliefSetting;
    private @Nullable GaugePressure reliefLiftedAt;
    private @Nullable Length staticHead;
    private @Nullable SizingNote sizing;
    private @Nullable LeakTest leakTest;
    private @Nullable FillWaterNote fillWater;
    private final RecordDate date;
    private final String by;
    private @Nullable String witnessedBy;
    private @Nullable String remarks;
    private Map<String, @Nullable Object> unknownFields = Map.of();

    CommissioningNoteBuilder(String installation, RecordDate date, String by) {
        this.installation = installation;
        this.date = date;
        this.by = by;
    }

    CommissioningNoteBuilder(CommissioningNote begun) {
        this.installation = begun.installation();
        this.place = begun.place();
        this.loop = begun.loop();
        this.vessels.addAll(begun.vessels());
        this.fill = begun.fill();
        this.reliefSetting = begun.reliefSetting();
        this.reliefLiftedAt = begun.reliefLiftedAt();
        this.staticHead = begun.staticHead();
        this.sizing = begun.sizing();
        this.leakTest = begun.leakTest();
        this.fillWater = begun.fillWater();
        this.date = begun.date();
        this.by = begun.by();
        this.witnessedBy = begun.witnessedBy();
        this.remarks = begun.remarks();
        this.unknownFields = begun.unknownFields();
    }

    /**
     * Where it is.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder place(@Nullable String value) {
        place = value;
        return this;
    }

    /**
     * The loop.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder loop(@Nullable LoopNote value) {
        loop = value;
        return this;
    }

    /**
     * Adds a vessel.
     *
     * @param one the vessel
     * @return this builder
     */
    public CommissioningNoteBuilder vessel(VesselNote one) {
        vessels.add(one);
        return this;
    }

    /**
     * The filling.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder fill(@Nullable FillNote value) {
        fill = value;
        return this;
    }

    /**
     * Setting of the relief valve.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder reliefSetting(@Nullable GaugePressure value) {
        reliefSetting = value;
        return this;
    }

    /**
     * Pressure at which the relief valve lifted when it was tried.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder reliefLiftedAt(@Nullable GaugePressure value) {
        reliefLiftedAt = value;
        return this;
    }

    /**
     * Height of the highest point of the loop above the vessel.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder staticHead(@Nullable Length value) {
        staticHead = value;
        return this;
    }

    /**
     * How the vessel was sized.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder sizing(@Nullable SizingNote value) {
        sizing = value;
        return this;
    }

    /**
     * The test for tightness.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder leakTest(@Nullable LeakTest value) {
        leakTest = value;
        return this;
    }

    /**
     * The water it was filled with.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder fillWater(@Nullable FillWaterNote value) {
        fillWater = value;
        return this;
    }

    /**
     * Who saw it done.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder witnessedBy(@Nullable String value) {
        witnessedBy = value;
        return this;
    }

    /**
     * Anything else.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public CommissioningNoteBuilder remarks(@Nullable String value) {
        remarks = value;
        return this;
    }

    /**
     * Closes the record.
     *
     * @return a commissioning note
     * @throws IllegalArgumentException if something in it is missing or out of range
     */
    public CommissioningNote build() {
        return new CommissioningNote(
                installation,
                place,
                loop,
                vessels,
                fill,
                reliefSetting,
                reliefLiftedAt,
                staticHead,
                sizing,
                leakTest,
                fillWater,
                date,
                by,
                witnessedBy,
                remarks,
                unknownFields);
    }
}
