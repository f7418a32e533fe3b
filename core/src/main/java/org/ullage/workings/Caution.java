package org.ullage.workings;

import java.io.Serializable;
import org.ullage.provenance.Source;

/**
 * Something the reader of an answer must know: a limit of the method in this case, or a danger of the work. Immutable.
 *
 * @param text one sentence for people
 * @param source where the limit or the practice comes from
 */
public record Caution(String text, Source source) implements Serializable {

    /**
     * The sentence with its source.
     *
     * @return one line
     */
    @Override
    public String toString() {
        return text + " " + source;
    }
}
