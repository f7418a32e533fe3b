package org.ullage.support;

/** Seismic design category of a building, from its site and use. */
public enum SeismicCategory {
    /** Least. */
    A,
    /** Low. */
    B,
    /** Moderate. */
    C,
    /** High. */
    D,
    /** High, near a large fault. */
    E,
    /** High, near a large fault, essential facility. */
    F
}
