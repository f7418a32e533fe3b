package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;

/**
 * The gauge a pressure was read on. Immutable.
 *
 * @param fullScale upper end of its scale, which begins at zero, or null if not recorded
 * @param accuracyClass its class or grade with the standard, or null if not recorded
 * @param identity which one it is: its number or place, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record GaugeNote(
        @Nullable GaugePressure fullScale,
        @Nullable String accuracyClass,
        @Nullable String identity,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param fullScale upper end of its scale, which begins at zero, or null if not recorded
     * @param accuracyClass its class or grade with the standard, or null if not recorded
     * @param identity which one it is: its number or place, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws OutOfRangeException if the full scale is not above zero
     */
    public GaugeNote {
        accuracyClass = Kept.text(accuracyClass);
        identity = Kept.text(identity);
        unknownFields = Kept.fields(unknownFields);
        Kept.aboveZero("full scale", fullScale);
    }

    /**
     * Takes what is known.
     *
     * @param fullScale upper end of its scale, which begins at zero, or null if not recorded
     * @param accuracyClass its class or grade with the standard, or null if not recorded
     * @param identity which one it is: its number or place, or null if not recorded
     * @throws OutOfRangeException if the full scale is not above zero
     */
    public GaugeNote(@Nullable GaugePressure fullScale, @Nullable String accuracyClass, @Nullable String identity) {
        this(fullScale, accuracyClass, identity, Map.of());
    }
}
