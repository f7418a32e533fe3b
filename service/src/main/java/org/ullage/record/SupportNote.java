package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Mass;

/**
 * What carries a vessel. Immutable.
 *
 * @param type bracket, rods, floor or what it is, or null if not recorded
 * @param checkedFor load it was checked for: shell and the whole nominal volume of fluid, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record SupportNote(
        @Nullable String type,
        @Nullable Mass checkedFor,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param type bracket, rods, floor or what it is, or null if not recorded
     * @param checkedFor load it was checked for: shell and the whole nominal volume of fluid, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     */
    public SupportNote {
        type = Kept.text(type);
        unknownFields = Kept.fields(unknownFields);
    }

    /**
     * Takes what is known.
     *
     * @param type bracket, rods, floor or what it is, or null if not recorded
     * @param checkedFor load it was checked for: shell and the whole nominal volume of fluid, or null if not recorded
     */
    public SupportNote(@Nullable String type, @Nullable Mass checkedFor) {
        this(type, checkedFor, Map.of());
    }
}
