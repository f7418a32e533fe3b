package org.ullage.record;

import java.io.Serializable;
import java.time.LocalDate;
import org.ullage.provenance.Source;

/**
 * When a charge must be looked at again. Immutable.
 *
 * @param date the day at the latest; not later than a year after the last check
 * @param reason why then, for people
 * @param source where the rule comes from
 */
public record NextCheck(LocalDate date, String reason, Source source) implements Serializable {

    /** The charge is checked every year. */
    static final Source YEARLY = Source.secondHand(
            "DIN EN 12828 and DIN 4807-2",
            "yearly service of the vessel",
            "article for owners; boiler instructions say the same");
}
