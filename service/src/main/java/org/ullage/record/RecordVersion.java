package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.io.Serializable;
import org.ullage.quantity.OutOfRangeException;

/**
 * The version of a file's form. It goes up only when an older release would misread the file: new fields alone do not change it, because
 * a release keeps the fields it does not know. Immutable.
 *
 * @param number from 1 to the one this release writes
 */
public record RecordVersion(int number) implements Serializable {

    /** The version that this release writes, and the newest that it reads. */
    public static final RecordVersion CURRENT = new RecordVersion(1);

    /**
     * Checks the number.
     *
     * @param number the version
     * @throws OutOfRangeException if it is below 1 or newer than this release
     */
    @JsonCreator
    public RecordVersion {
        if (number > 1) {
            throw new OutOfRangeException(
                    "version",
                    Integer.toString(number),
                    "1, the newest that this release can read",
                    "read the file with the newer release that wrote it; writing it with this one would lose something");
        }
        if (number < 1) {
            throw new OutOfRangeException("version", Integer.toString(number), "1", "write 1");
        }
    }

    /**
     * The number as a file has it.
     *
     * @return 1
     */
    @JsonValue
    @Override
    public int number() {
        return number;
    }
}
