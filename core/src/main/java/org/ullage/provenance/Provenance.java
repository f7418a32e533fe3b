package org.ullage.provenance;

/** How far a number can be trusted, by the way it reached this library. */
public enum Provenance {
    /** Printed in a document that is named with its edition and clause or table, read directly or as quoted by another. */
    PUBLISHED,
    /** Computed with a general reference library or from a published formula, which is named. */
    COMPUTED,
    /** Remembered, not checked against the document. Usable, and shown as such. */
    FROM_MEMORY,
    /** Used in the trade without a document behind it. */
    COMMON_PRACTICE,
    /** The caller's own value, taken as it was given. */
    GIVEN
}
