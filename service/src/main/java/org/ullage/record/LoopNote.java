package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.ContentsBasis;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;

/**
 * The loop that a vessel serves. Immutable.
 *
 * @param contents fluid in it, cold, without the vessels, or null if not recorded
 * @param contentsBasis how the contents are known, or null if not recorded
 * @param fluid what it is filled with, in words, or null if not recorded
 * @param volumeConcentration share of antifreeze by volume, measured after mixing, or null if not recorded
 * @param massConcentration share of antifreeze by mass, measured after mixing, or null if not recorded
 * @param freezingPoint freezing point of the mixture, measured after mixing, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record LoopNote(
        @Nullable Volume contents,
        @Nullable ContentsBasis contentsBasis,
        @Nullable String fluid,
        @Nullable VolumeFraction volumeConcentration,
        @Nullable MassFraction massConcentration,
        @Nullable Temperature freezingPoint,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param contents fluid in it, cold, without the vessels, or null if not recorded
     * @param contentsBasis how the contents are known, or null if not recorded
     * @param fluid what it is filled with, in words, or null if not recorded
     * @param volumeConcentration share of antifreeze by volume, measured after mixing, or null if not recorded
     * @param massConcentration share of antifreeze by mass, measured after mixing, or null if not recorded
     * @param freezingPoint freezing point of the mixture, measured after mixing, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws OutOfRangeException if the contents is not above zero
     */
    public LoopNote {
        fluid = Kept.text(fluid);
        unknownFields = Kept.fields(unknownFields);
        Kept.aboveZero("contents", contents);
    }

    /**
     * Takes what is known.
     *
     * @param contents fluid in it, cold, without the vessels, or null if not recorded
     * @param contentsBasis how the contents are known, or null if not recorded
     * @param fluid what it is filled with, in words, or null if not recorded
     * @param volumeConcentration share of antifreeze by volume, measured after mixing, or null if not recorded
     * @param massConcentration share of antifreeze by mass, measured after mixing, or null if not recorded
     * @param freezingPoint freezing point of the mixture, measured after mixing, or null if not recorded
     * @throws OutOfRangeException if the contents is not above zero
     */
    public LoopNote(
            @Nullable Volume contents,
            @Nullable ContentsBasis contentsBasis,
            @Nullable String fluid,
            @Nullable VolumeFraction volumeConcentration,
            @Nullable MassFraction massConcentration,
            @Nullable Temperature freezingPoint) {
        this(contents, contentsBasis, fluid, volumeConcentration, massConcentration, freezingPoint, Map.of());
    }
}
