package org.ullage.method;

/** The inputs of a sizing that are numbers, so that they may be varied, drawn or read from columns. */
public enum SizingInput {
    /** The contents of the loop, m3. */
    CONTENTS("contents"),
    /** The lowest (or fill) temperature, K. */
    COLD_TEMPERATURE("cold temperature"),
    /** The highest temperature in the sense of the method, K. */
    HOT_TEMPERATURE("hot temperature"),
    /** The height of the highest point above the vessel, m. */
    STATIC_HEAD("static head"),
    /** The lowest pressure at the vessel, gauge, Pa. */
    COLD_PRESSURE("cold pressure"),
    /** The gas charge, gauge, Pa. */
    CHARGE("gas charge"),
    /** The highest pressure at the vessel, gauge, Pa. */
    FINAL_PRESSURE("final pressure"),
    /** The pressure at which the relief valve opens, gauge, Pa. */
    RELIEF_SETTING("relief setting");

    private final String words;

    SizingInput(String words) {
        this.words = words;
    }

    /**
     * The place of this input in a row of numbers.
     *
     * @return from 0
     */
    @SuppressWarnings("EnumOrdinal") // a row has a number for each input in order
    public int place() {
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
