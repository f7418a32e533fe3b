package org.ullage.record;

import java.io.Serializable;
import org.ullage.condition.SampleValue;

/**
 * One measured value in the history of a fluid. Immutable.
 *
 * @param date the day
 * @param value what was measured
 * @param stretch which stretch between two treatments of the fluid it belongs to, from 0
 */
public record SamplePoint(RecordDate date, SampleValue value, int stretch) implements Serializable {

    /**
     * The point for people.
     *
     * @return such as {@code 2026-11-25: pH 7.9}
     */
    public String text() {
        return date + ": " + value.text();
    }
}
