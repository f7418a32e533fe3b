package org.ullage.report;

import java.io.Serializable;

/**
 * A column of a {@link Table}. Immutable.
 *
 * @param header what is in it
 * @param isNumeric whether its cells end at the right, as numbers do
 */
public record Column(String header, boolean isNumeric) implements Serializable {

    /**
     * A column of words, which begin at the left.
     *
     * @param header what is in it
     * @return the column
     */
    public static Column words(String header) {
        return new Column(header, false);
    }

    /**
     * A column of numbers, which end at the right.
     *
     * @param header what is in it
     * @return the column
     */
    public static Column numbers(String header) {
        return new Column(header, true);
    }
}
