package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;

/**
 * One step of a piece of work. Immutable.
 *
 * @param text what to do
 * @param source where the step comes from
 */
public record CheckStep(String text, Source source) implements Serializable {

    /**
     * The step with its source.
     *
     * @return one line
     */
    @Override
    public String toString() {
        return text + " " + source;
    }
}
