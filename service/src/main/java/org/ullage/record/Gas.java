package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonValue;

/** The gas a vessel is charged with. */
public enum Gas {
    /** Compressed air: brings oxygen and moisture to the membrane. */
    AIR("air"),
    /** Dry nitrogen. */
    NITROGEN("nitrogen");

    private final String word;

    Gas(String word) {
        this.word = word;
    }

    /**
     * Its name for people and in files.
     *
     * @return such as {@code nitrogen}
     */
    @JsonValue
    public String word() {
        return word;
    }
}
