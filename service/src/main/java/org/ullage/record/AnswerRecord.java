package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Volume;

/**
 * The answer to a sizing job, as a file has it. Immutable.
 *
 * @param requiredVolume smallest nominal volume that does the job
 * @param governing what decided it, or null if not recorded
 * @param expansionVolume net expansion of the loop, or null if not recorded
 * @param reserveVolume water kept in reserve, or null if not recorded
 * @param vapourVolume liquid that vapour pushes out, or null if not recorded
 * @param acceptanceVolume water the vessel must take in all, or null if not recorded
 * @param preCharge gas charge to set with the water side empty, or null if not recorded
 * @param coldPressure lowest pressure at the vessel, or null if not recorded
 * @param finalPressure highest pressure at the vessel, or null if not recorded
 * @param atmosphere air pressure that was counted with, or null if not recorded
 * @param warnings what the reader must know
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record AnswerRecord(
        Volume requiredVolume,
        @Nullable String governing,
        @Nullable Volume expansionVolume,
        @Nullable Volume reserveVolume,
        @Nullable Volume vapourVolume,
        @Nullable Volume acceptanceVolume,
        @Nullable GaugePressure preCharge,
        @Nullable GaugePressure coldPressure,
        @Nullable GaugePressure finalPressure,
        @Nullable AbsolutePressure atmosphere,
        List<WarningRecord> warnings,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param requiredVolume smallest nominal volume that does the job
     * @param governing what decided it, or null if not recorded
     * @param expansionVolume net expansion of the loop, or null if not recorded
     * @param reserveVolume water kept in reserve, or null if not recorded
     * @param vapourVolume liquid that vapour pushes out, or null if not recorded
     * @param acceptanceVolume water the vessel must take in all, or null if not recorded
     * @param preCharge gas charge to set with the water side empty, or null if not recorded
     * @param coldPressure lowest pressure at the vessel, or null if not recorded
     * @param finalPressure highest pressure at the vessel, or null if not recorded
     * @param atmosphere air pressure that was counted with, or null if not recorded
     * @param warnings what the reader must know
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if required volume is missing
     */
    public AnswerRecord {
        Kept.present("required volume", requiredVolume, "an answer");
        governing = Kept.text(governing);
        warnings = Kept.list("warnings", warnings);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes an answer.
     *
     * @param sizing the answer
     * @return the record
     */
    static AnswerRecord of(Sizing sizing) {
        return new AnswerRecord(
                sizing.requiredVolume(),
                sizing.governing().toString(),
                sizing.expansionVolume(),
                sizing.reserveVolume(),
                sizing.vapourVolume(),
                sizing.acceptanceVolume(),
                sizing.preCharge(),
                sizing.coldPressure(),
                sizing.finalPressure(),
                sizing.atmosphere(),
                sizing.warnings().stream().map(WarningRecord::of).toList(),
                Map.of());
    }
}
