package org.ullage.report;

import java.util.List;
import org.ullage.workings.Caution;

/**
 * What the reader must mind, each with its source. Immutable.
 *
 * @param cautions the cautions; an empty list is shown as "None."
 */
public record CautionList(List<Caution> cautions) implements Block {

    /** What stands in place of an empty list. */
    static final String NONE = "None.";

    /**
     * Copies the cautions.
     *
     * @param cautions the cautions
     */
    public CautionList {
        cautions = List.copyOf(cautions);
    }

    @Override
    public void writeTo(Medium medium) {
        medium.cautions(this);
    }
}
