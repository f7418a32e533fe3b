package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;

/**
 * The gas charge as it was found and set with the water side empty. A charge means something only with the temperature of its
 * gas. Immutable.
 *
 * @param found charge as it was found, or null if not recorded
 * @param set charge as it was set, or null if not recorded
 * @param gasTemperature temperature of the gas, which after some hours is that of shell and air, or null if not recorded
 * @param gas gas it was charged with, or null if not recorded
 * @param gauge gauge it was read on, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record ChargeNote(
        @Nullable GaugePressure found,
        @Nullable GaugePressure set,
        @Nullable Temperature gasTemperature,
        @Nullable Gas gas,
        @Nullable GaugeNote gauge,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param found charge as it was found, or null if not recorded
     * @param set charge as it was set, or null if not recorded
     * @param gasTemperature temperature of the gas, which after some hours is that of shell and air, or null if not recorded
     * @param gas gas it was charged with, or null if not recorded
     * @param gauge gauge it was read on, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public ChargeNote {
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param found charge as it was found, or null if not recorded
     * @param set charge as it was set, or null if not recorded
     * @param gasTemperature temperature of the gas, which after some hours is that of shell and air, or null if not recorded
     * @param gas gas it was charged with, or null if not recorded
     * @param gauge gauge it was read on, or null if not recorded
     */
    public ChargeNote(
            @Nullable GaugePressure found,
            @Nullable GaugePressure set,
            @Nullable Temperature gasTemperature,
            @Nullable Gas gas,
            @Nullable GaugeNote gauge) {
        this(found, set, gasTemperature, gas, gauge, Map.of());
    }
}
