package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;

/**
 * Readings of the loop on arrival, before anything was touched. Immutable.
 *
 * @param coldPressure pressure of the loop cold, or null if not recorded
 * @param coldTemperature temperature of the water then, or null if not recorded
 * @param hotPressure pressure of the loop hot, or null if not recorded
 * @param hotTemperature temperature of the water then, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record ArrivalNote(
        @Nullable GaugePressure coldPressure,
        @Nullable Temperature coldTemperature,
        @Nullable GaugePressure hotPressure,
        @Nullable Temperature hotTemperature,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param coldPressure pressure of the loop cold, or null if not recorded
     * @param coldTemperature temperature of the water then, or null if not recorded
     * @param hotPressure pressure of the loop hot, or null if not recorded
     * @param hotTemperature temperature of the water then, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public ArrivalNote {
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param coldPressure pressure of the loop cold, or null if not recorded
     * @param coldTemperature temperature of the water then, or null if not recorded
     * @param hotPressure pressure of the loop hot, or null if not recorded
     * @param hotTemperature temperature of the water then, or null if not recorded
     */
    public ArrivalNote(
            @Nullable GaugePressure coldPressure,
            @Nullable Temperature coldTemperature,
            @Nullable GaugePressure hotPressure,
            @Nullable Temperature hotTemperature) {
        this(coldPressure, coldTemperature, hotPressure, hotTemperature, Map.of());
    }
}
