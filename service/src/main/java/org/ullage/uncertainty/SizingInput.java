package org.ullage.uncertainty;

/** The inputs of a sizing that may be uncertain. */
public enum SizingInput {
    /** The contents of the loop. */
    CONTENTS("contents"),
    /** The lowest (or fill) temperature. */
    COLD_TEMPERATURE("cold temperature"),
    /** The highest temperature in the sense of the method. */
    HOT_TEMPERATURE("hot temperature"),
    /** The height of the highest point above the vessel. */
    STATIC_HEAD("static head"),
    /** The lowest pressure at the vessel. */
    COLD_PRESSURE("cold pressure"),
    /** The gas charge. */
    CHARGE("gas charge"),
    /** The highest pressure at the vessel. */
    FINAL_PRESSURE("final pressure"),
    /** The pressure at which the relief valve opens. */
    RELIEF_SETTING("relief setting");

    private final String words;

    SizingInput(String words) {
        this.words = words;
    }

    /** The place of this input in a row of drawn numbers. */
    @SuppressWarnings("EnumOrdinal") // a row has a number for each input in order
    int place() {
        return ordinal();
    }

    /**
     * The input in words.
     *
     * @return such as {@code cold pressure}
     */
    @Override
    public String toString() {
        return words;
    }
}
