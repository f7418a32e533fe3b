package org.ullage.record;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

/** Fills in a vessel step by step. Not for many threads. Begin one with {@link VesselNote#of} or {@link VesselNote#toBuilder}. */
public final class VesselNoteBuilder {

    private final String id;
    private @Nullable VesselKind kind;
    private @Nullable Volume nominal;
    private @Nullable GaugePressure rating;
    private @Nullable Temperature maximumTemperature;
    private @Nullable String serial;
    private @Nullable SupportNote support;
    private @Nullable String connection;
    private @Nullable Boolean lockableValve;
    private @Nullable ChargeNote charge;
    private Map<String, @Nullable Object> unknownFields = Map.of();

    VesselNoteBuilder(String id) {
        this.id = id;
    }

    VesselNoteBuilder(VesselNote begun) {
        this.id = begun.id();
        this.kind = begun.kind();
        this.nominal = begun.nominal();
        this.rating = begun.rating();
        this.maximumTemperature = begun.maximumTemperature();
        this.serial = begun.serial();
        this.support = begun.support();
        this.connection = begun.connection();
        this.lockableValve = begun.lockableValve();
        this.charge = begun.charge();
        this.unknownFields = begun.unknownFields();
    }

    /**
     * Its kind.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder kind(@Nullable VesselKind value) {
        kind = value;
        return this;
    }

    /**
     * Nominal volume.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder nominal(@Nullable Volume value) {
        nominal = value;
        return this;
    }

    /**
     * Highest pressure it may see.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder rating(@Nullable GaugePressure value) {
        rating = value;
        return this;
    }

    /**
     * Highest temperature its membrane may see.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder maximumTemperature(@Nullable Temperature value) {
        maximumTemperature = value;
        return this;
    }

    /**
     * Serial number and whatever else its plate says.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder serial(@Nullable String value) {
        serial = value;
        return this;
    }

    /**
     * What carries it.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder support(@Nullable SupportNote value) {
        support = value;
        return this;
    }

    /**
     * Where it is connected to the loop.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder connection(@Nullable String value) {
        connection = value;
        return this;
    }

    /**
     * Whether a valve that can be locked open and a drain part it from the loop.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder lockableValve(@Nullable Boolean value) {
        lockableValve = value;
        return this;
    }

    /**
     * Its gas charge.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public VesselNoteBuilder charge(@Nullable ChargeNote value) {
        charge = value;
        return this;
    }

    /**
     * Closes the record.
     *
     * @return a vessel
     * @throws IllegalArgumentException if something in it is missing or out of range
     */
    public VesselNote build() {
        return new VesselNote(
                id,
                kind,
                nominal,
                rating,
                maximumTemperature,
                serial,
                support,
                connection,
                lockableValve,
                charge,
                unknownFields);
    }
}
