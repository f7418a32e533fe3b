package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;

/**
 * The filling and the first heating. Pressures are those of the gauge of the loop. Immutable.
 *
 * @param pressure pressure it was filled to, cold, or null if not recorded
 * @param waterTemperature temperature of the water then, or null if not recorded
 * @param gaugeAboveVessel height of the gauge above the vessel, negative if below, or null if not recorded
 * @param minimumMark where the minimum mark was set on the gauge, or null if not recorded
 * @param hotPressure pressure at the highest temperature reached, or null if not recorded
 * @param hotTemperature highest temperature reached, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record FillNote(
        @Nullable GaugePressure pressure,
        @Nullable Temperature waterTemperature,
        @Nullable Length gaugeAboveVessel,
        @Nullable GaugePressure minimumMark,
        @Nullable GaugePressure hotPressure,
        @Nullable Temperature hotTemperature,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param pressure pressure it was filled to, cold, or null if not recorded
     * @param waterTemperature temperature of the water then, or null if not recorded
     * @param gaugeAboveVessel height of the gauge above the vessel, negative if below, or null if not recorded
     * @param minimumMark where the minimum mark was set on the gauge, or null if not recorded
     * @param hotPressure pressure at the highest temperature reached, or null if not recorded
     * @param hotTemperature highest temperature reached, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public FillNote {
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param pressure pressure it was filled to, cold, or null if not recorded
     * @param waterTemperature temperature of the water then, or null if not recorded
     * @param gaugeAboveVessel height of the gauge above the vessel, negative if below, or null if not recorded
     * @param minimumMark where the minimum mark was set on the gauge, or null if not recorded
     * @param hotPressure pressure at the highest temperature reached, or null if not recorded
     * @param hotTemperature highest temperature reached, or null if not recorded
     */
    public FillNote(
            @Nullable GaugePressure pressure,
            @Nullable Temperature waterTemperature,
            @Nullable Length gaugeAboveVessel,
            @Nullable GaugePressure minimumMark,
            @Nullable GaugePressure hotPressure,
            @Nullable Temperature hotTemperature) {
        this(pressure, waterTemperature, gaugeAboveVessel, minimumMark, hotPressure, hotTemperature, Map.of());
    }
}
