package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

/**
 * How the vessel was sized. Immutable.
 *
 * @param method method and edition, or null if not recorded
 * @param requiredVolume smallest nominal volume it asked for, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record SizingNote(
        @Nullable String method,
        @Nullable Volume requiredVolume,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param method method and edition, or null if not recorded
     * @param requiredVolume smallest nominal volume it asked for, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws OutOfRangeException if the required volume is not above zero
     */
    public SizingNote {
        method = Kept.text(method);
        unknownFields = Kept.fields(unknownFields);
        Kept.aboveZero("required volume", requiredVolume);
    }

    /**
     * Takes what is known.
     *
     * @param method method and edition, or null if not recorded
     * @param requiredVolume smallest nominal volume it asked for, or null if not recorded
     * @throws OutOfRangeException if the required volume is not above zero
     */
    public SizingNote(@Nullable String method, @Nullable Volume requiredVolume) {
        this(method, requiredVolume, Map.of());
    }
}
