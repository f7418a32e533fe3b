package org.ullage.record;

import java.io.Serializable;

/**
 * A reading that a trend cannot use, so that its absence is seen. Immutable.
 *
 * @param date the day
 * @param reason why, for people
 */
public record LeftOut(RecordDate date, String reason) implements Serializable {

    /**
     * The day and the reason.
     *
     * @return one line
     */
    @Override
    public String toString() {
        return date + " left out: " + reason;
    }
}
