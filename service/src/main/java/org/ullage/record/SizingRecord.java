package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A sizing with its answer, to be filed and done again later. Immutable; {@link #of} makes one.
 *
 * @param schema says what the file is: {@value #SCHEMA}
 * @param version version of the form
 * @param job what was sized and by which method
 * @param answer what came out
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record SizingRecord(
        String schema,
        RecordVersion version,
        JobRecord job,
        AnswerRecord answer,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param schema says what the file is: {@value #SCHEMA}
     * @param version version of the form
     * @param job what was sized and by which method
     * @param answer what came out
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if schema or version or job or answer is missing
     * @throws OutOfRangeException if the file says that it is something else
     */
    public SizingRecord {
        schema = Kept.required("schema", schema, "a sizing record");
        Kept.present("version", version, "a sizing record");
        Kept.present("job", job, "a sizing record");
        Kept.present("answer", answer, "a sizing record");
        unknownFields = Kept.fields(unknownFields);
        SchemaName.require(SCHEMA, schema);
    }

    /** What a file of this kind says it is. */
    public static final String SCHEMA = "ullage-sizing";

    /**
     * Records a sizing; the fluid by its name alone.
     *
     * @param sizing the answer
     * @return the record
     */
    public static SizingRecord of(Sizing sizing) {
        return of(sizing, sizing.job().loop().fluid().name());
    }

    /**
     * Records a sizing with the fluid as a reader takes it, where its name alone would bring back another model.
     *
     * @param sizing the answer
     * @param fluid such as {@code propylene glycol 30 vol%/melinder}
     * @return the record
     */
    public static SizingRecord of(Sizing sizing, String fluid) {
        return new SizingRecord(
                SCHEMA,
                RecordVersion.CURRENT,
                JobRecord.of(sizing.job(), sizing.method(), fluid),
                AnswerRecord.of(sizing),
                Map.of());
    }
}
