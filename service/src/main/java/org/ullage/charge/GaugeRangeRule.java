package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;

/**
 * A rule for the range of a gauge, as it is published or practised, in words. Immutable.
 *
 * @param subject which gauge it is for
 * @param words what it asks for
 * @param source where it comes from
 */
public record GaugeRangeRule(String subject, String words, Source source) implements Serializable {

    /**
     * The rule for people.
     *
     * @return one line with its source
     */
    @Override
    public String toString() {
        return subject + ": " + words + " " + source;
    }
}
