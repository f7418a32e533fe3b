package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Provenance;
import org.ullage.provenance.Source;
import org.ullage.quantity.MissingInputException;
import org.ullage.workings.Caution;

/**
 * A warning of an answer with its source, as a file has it. Immutable.
 *
 * @param text one sentence for people
 * @param provenance how far its source can be trusted
 * @param document the document or practice
 * @param place edition, clause or table, or null if not recorded
 * @param reading how it was read when not directly, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record WarningRecord(
        String text,
        Provenance provenance,
        String document,
        @Nullable String place,
        @Nullable String reading,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param text one sentence for people
     * @param provenance how far its source can be trusted
     * @param document the document or practice
     * @param place edition, clause or table, or null if not recorded
     * @param reading how it was read when not directly, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if text or provenance or document is missing
     */
    public WarningRecord {
        text = Kept.required("text", text, "a warning");
        Kept.present("provenance", provenance, "a warning");
        document = Kept.required("document", document, "a warning");
        place = Kept.text(place);
        reading = Kept.text(reading);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes a warning.
     *
     * @param caution the warning
     * @return the record
     */
    static WarningRecord of(Caution caution) {
        Source source = caution.source();
        return new WarningRecord(
                caution.text(), source.provenance(), source.document(), source.place(), source.reading(), Map.of());
    }

    /**
     * The warning.
     *
     * @return as an answer has it
     */
    public Caution caution() {
        return new Caution(
                text, new Source(provenance, document, place == null ? "" : place, reading == null ? "" : reading));
    }
}
