package org.ullage.diagnosis;

/** What may be looked at on a visit besides the gauge and the thermometer. */
public enum Inspection {
    /** The discharge of the relief valve. */
    RELIEF_VALVE("look at the discharge of the relief valve, cold and hot"),
    /** The gas valve, pressed for a moment. */
    GAS_VALVE("press the core of the gas valve for a moment"),
    /** The sound of the shell when tapped. */
    SHELL_SOUND("tap the shell at both ends"),
    /** The cold pressure over a day with the feed closed. */
    FEED("close the feed for a day and log the cold pressure"),
    /** Noises and vents at the top. */
    TOP_OF_LOOP("listen and vent at the highest point");

    private final String words;

    Inspection(String words) {
        this.words = words;
    }

    /**
     * What to do.
     *
     * @return for people
     */
    public String words() {
        return words;
    }
}
