package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * The history of a loop: how it was put into use and what each visit found and left. Immutable; {@link #of} begins one, {@link
 * #withVisit} goes on.
 *
 * @param schema says what the file is: {@value #SCHEMA}
 * @param version version of the form
 * @param commissioning how it was put into use
 * @param visits the visits in order of their days
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record ServiceBook(
        String schema,
        RecordVersion version,
        CommissioningNote commissioning,
        List<VisitRecord> visits,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param schema says what the file is: {@value #SCHEMA}
     * @param version version of the form
     * @param commissioning how it was put into use
     * @param visits the visits in order of their days
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if schema or version or commissioning note is missing
     * @throws OutOfRangeException if the file says that it is something else, a visit is dated before the commissioning or names
     *     a vessel that is not there
     */
    public ServiceBook {
        schema = Kept.required("schema", schema, "a service book");
        Kept.present("version", version, "a service book");
        Kept.present("commissioning note", commissioning, "a service book");
        visits = Kept.list("visits", visits);
        unknownFields = Kept.fields(unknownFields);
        SchemaName.require(SCHEMA, schema);
        visits = visits.stream().sorted(Comparator.comparing(VisitRecord::date)).toList();
        VesselNames.requireKnown(commissioning, visits);
    }

    /** What a file of this kind says it is. */
    public static final String SCHEMA = "ullage-record";

    /**
     * Begins a book.
     *
     * @param commissioning how the loop was put into use
     * @return a book without visits
     */
    public static ServiceBook of(CommissioningNote commissioning) {
        return new ServiceBook(SCHEMA, RecordVersion.CURRENT, commissioning, List.of(), Map.of());
    }

    /**
     * Adds a visit.
     *
     * @param visit the visit, of any day since the commissioning
     * @return a copy with it, in order of the days
     * @throws OutOfRangeException if it is dated before the commissioning or names a vessel that is not there
     */
    public ServiceBook withVisit(VisitRecord visit) {
        List<VisitRecord> more = new ArrayList<>(visits);
        more.add(visit);
        return new ServiceBook(schema, version, commissioning, more, unknownFields);
    }

    /**
     * The vessels that are there after the last visit.
     *
     * @return those of the commissioning, replaced where a visit says so
     */
    public List<VesselNote> vesselsNow() {
        return VesselNames.after(commissioning, visits);
    }

    /**
     * The book for people; what is not recorded is named as such.
     *
     * @param system metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        StringBuilder text = new StringBuilder(commissioning.text(system));
        visits.forEach(visit -> text.append('\n').append(visit.text(system)));
        return text.toString();
    }
}
