package org.ullage.vessel;

import com.fasterxml.jackson.annotation.JsonValue;

/** The kinds of expansion vessel the trade knows. */
public enum VesselKind {
    /** Gas and water parted by a membrane fixed at its rim; takes water into a part of its shell only. */
    DIAPHRAGM("diaphragm"),
    /** Water inside a replaceable bag; can fill the whole shell. */
    BLADDER("bladder"),
    /** A steel tank with air and water in contact, first full of air at atmospheric pressure unless pre-charged. */
    PLAIN_STEEL("plain-steel"),
    /** A tank open to the air at the top of the loop. */
    OPEN("open");

    private final String word;

    VesselKind(String word) {
        this.word = word;
    }

    /**
     * The kind as written in files.
     *
     * @return lower case, such as {@code plain-steel}
     */
    @JsonValue
    public String word() {
        return word;
    }
}
