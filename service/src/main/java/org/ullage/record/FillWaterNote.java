package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * The water the loop was filled with: the beginning of its log. Immutable.
 *
 * @param amount how much was filled, or null if not recorded
 * @param hardness hardness with its unit, or null if not recorded
 * @param readings what was measured
 * @param treatment how it was treated, with which product, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record FillWaterNote(
        @Nullable Volume amount,
        @Nullable String hardness,
        List<SampleReading> readings,
        @Nullable String treatment,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param amount how much was filled, or null if not recorded
     * @param hardness hardness with its unit, or null if not recorded
     * @param readings what was measured
     * @param treatment how it was treated, with which product, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws OutOfRangeException if the fill water is negative
     */
    public FillWaterNote {
        hardness = Kept.text(hardness);
        readings = Kept.list("readings", readings);
        treatment = Kept.text(treatment);
        unknownFields = Kept.fields(unknownFields);
        Kept.notNegative("fill water", amount);
    }

    /**
     * Takes what is known.
     *
     * @param amount how much was filled, or null if not recorded
     * @param hardness hardness with its unit, or null if not recorded
     * @param readings what was measured
     * @param treatment how it was treated, with which product, or null if not recorded
     * @throws OutOfRangeException if the fill water is negative
     */
    public FillWaterNote(
            @Nullable Volume amount,
            @Nullable String hardness,
            List<SampleReading> readings,
            @Nullable String treatment) {
        this(amount, hardness, readings, treatment, Map.of());
    }
}
