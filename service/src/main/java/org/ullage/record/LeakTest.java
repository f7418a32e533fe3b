package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;

/**
 * The test for tightness. Immutable.
 *
 * @param pressure pressure at its beginning, or null if not recorded
 * @param duration how long it was held, with its unit, or null if not recorded
 * @param drop what was lost, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record LeakTest(
        @Nullable GaugePressure pressure,
        @Nullable String duration,
        @Nullable PressureDifference drop,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param pressure pressure at its beginning, or null if not recorded
     * @param duration how long it was held, with its unit, or null if not recorded
     * @param drop what was lost, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public LeakTest {
        duration = Kept.text(duration);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param pressure pressure at its beginning, or null if not recorded
     * @param duration how long it was held, with its unit, or null if not recorded
     * @param drop what was lost, or null if not recorded
     */
    public LeakTest(@Nullable GaugePressure pressure, @Nullable String duration, @Nullable PressureDifference drop) {
        this(pressure, duration, drop, Map.of());
    }
}
