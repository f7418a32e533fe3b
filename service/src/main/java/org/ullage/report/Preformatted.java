package org.ullage.report;

import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Workings;

/**
 * Lines that keep their breaks and their indent, in type of one width. Immutable.
 *
 * @param text lines, each ended by a line feed
 */
public record Preformatted(String text) implements Block {

    /**
     * The workings of an answer.
     *
     * @param workings the steps
     * @param system metric or inch-pound
     * @return their lines
     */
    public static Preformatted of(Workings workings, UnitSystem system) {
        return new Preformatted(workings.text(system));
    }

    @Override
    public void writeTo(Medium medium) {
        medium.preformatted(this);
    }
}
