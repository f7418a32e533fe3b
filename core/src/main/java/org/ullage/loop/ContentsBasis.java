package org.ullage.loop;

import com.fasterxml.jackson.annotation.JsonValue;

/** How the contents of a loop are known, from the surest to the least sure. */
public enum ContentsBasis {
    /** Metered while filling or drained and measured. */
    MEASURED("measured"),
    /** Counted up from pipes and parts. */
    TAKE_OFF("taken off"),
    /** Worked out from two readings of pressure and temperature. */
    TWO_READINGS("from two readings"),
    /** A rule of thumb. */
    ESTIMATED("estimated");

    private final String words;

    ContentsBasis(String words) {
        this.words = words;
    }

    /**
     * The basis in words.
     *
     * @return such as {@code taken off}
     */
    @JsonValue
    @Override
    public String toString() {
        return words;
    }
}
