package org.ullage.selection;

/** What can stand in the way of a selection. */
public enum Limit {
    /** The number of vessels. */
    VESSELS("number of vessels"),
    /** Vessels of one item only. */
    SAME_SIZE("same size only"),
    /** The floor area. */
    FOOTPRINT("footprint"),
    /** The height of the tallest. */
    HEIGHT("height"),
    /** The waterlogged mass. */
    LOAD("waterlogged mass"),
    /** What is in stock. */
    STOCK("stock"),
    /** The pressure each vessel must be rated for. */
    RATING("pressure rating"),
    /** The temperature each vessel must be rated for. */
    TEMPERATURE("temperature rating"),
    /** The kinds of vessel allowed. */
    KIND("kind of vessel"),
    /** The required volume itself. */
    VOLUME("required volume");

    private final String word;

    Limit(String word) {
        this.word = word;
    }

    /**
     * The limit in words.
     *
     * @return such as {@code number of vessels}
     */
    public String word() {
        return word;
    }
}
