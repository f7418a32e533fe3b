package org.ullage.provenance;

import java.io.Serializable;

/**
 * The origin of a number, formula or rule. Immutable.
 *
 * @param provenance how far it can be trusted
 * @param document the document, library or practice, by its title
 * @param place edition, clause, table or equation; empty when there is none
 * @param reading how it was read when not from the document itself, such as "second-hand: quoted in a state rule"; empty
 *     when it was read directly
 */
public record Source(Provenance provenance, String document, String place, String reading) implements Serializable {

    /**
     * Checks that the document is named.
     *
     * @param provenance how far it can be trusted
     * @param document the document, library or practice
     * @param place edition, clause, table or equation, or empty
     * @param reading how it was read, or empty
     * @throws IllegalArgumentException if the document is blank
     */
    public Source {
        if (document.isBlank()) {
            throw new IllegalArgumentException("a source must name its document, library or practice; it was blank");
        }
    }

    /**
     * A number printed in a document that was read directly.
     *
     * @param document title and body
     * @param place edition, clause, table or equation
     * @return the source
     */
    public static Source published(String document, String place) {
        return new Source(Provenance.PUBLISHED, document, place, "");
    }

    /**
     * A number printed in a document that was read in another text.
     *
     * @param document title and body of the original
     * @param place edition, clause, table or equation
     * @param quotedIn what kind of text quotes it
     * @return the source
     */
    public static Source secondHand(String document, String place, String quotedIn) {
        return new Source(Provenance.PUBLISHED, document, place, "second-hand: " + quotedIn);
    }

    /**
     * A number computed with a general reference library or from a published formula.
     *
     * @param with the library and version, or the formula's document
     * @param how what was computed
     * @return the source
     */
    public static Source computed(String with, String how) {
        return new Source(Provenance.COMPUTED, with, how, "");
    }

    /**
     * A number remembered from a document that was not opened.
     *
     * @param document title and body of the document it is remembered from
     * @param place edition, clause, table or equation
     * @return the source
     */
    public static Source fromMemory(String document, String place) {
        return new Source(Provenance.FROM_MEMORY, document, place, "not checked against the document");
    }

    /**
     * A number used in the trade without a document.
     *
     * @param practice what the practice is
     * @return the source
     */
    public static Source commonPractice(String practice) {
        return new Source(Provenance.COMMON_PRACTICE, practice, "", "");
    }

    /**
     * A value that the caller gave.
     *
     * @return the source of every input
     */
    public static Source given() {
        return new Source(Provenance.GIVEN, "the caller's value", "", "");
    }

    /**
     * One line for people: provenance, document, place, and how it was read.
     *
     * @return such as {@code [FROM_MEMORY] EN 12828, Annex D (not checked against the document)}
     */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder("[").append(provenance).append("] ").append(document);
        if (!place.isEmpty()) {
            text.append(", ").append(place);
        }
        if (!reading.isEmpty()) {
            text.append(" (").append(reading).append(')');
        }
        return text.toString();
    }
}
