package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The relief valve at a visit. Immutable.
 *
 * @param signsOfDischarge whether it shows signs of having discharged, or null if not recorded
 * @param leverTested whether it was tried by its lever, or null if not recorded
 * @param closedTight whether it closed tight afterwards, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record ReliefNote(
        @Nullable Boolean signsOfDischarge,
        @Nullable Boolean leverTested,
        @Nullable Boolean closedTight,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param signsOfDischarge whether it shows signs of having discharged, or null if not recorded
     * @param leverTested whether it was tried by its lever, or null if not recorded
     * @param closedTight whether it closed tight afterwards, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public ReliefNote {
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param signsOfDischarge whether it shows signs of having discharged, or null if not recorded
     * @param leverTested whether it was tried by its lever, or null if not recorded
     * @param closedTight whether it closed tight afterwards, or null if not recorded
     */
    public ReliefNote(
            @Nullable Boolean signsOfDischarge, @Nullable Boolean leverTested, @Nullable Boolean closedTight) {
        this(signsOfDischarge, leverTested, closedTight, Map.of());
    }
}
