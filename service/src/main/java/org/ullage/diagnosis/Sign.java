package org.ullage.diagnosis;

/** What an inspection found. Of each inspection one sign is true. */
public enum Sign {
    /** The relief valve has not discharged. */
    RELIEF_DRY(Inspection.RELIEF_VALVE, "relief valve dry"),
    /** The relief valve discharges when the loop is hot. */
    RELIEF_DRIPS_HOT(Inspection.RELIEF_VALVE, "relief valve drips when hot"),
    /** The relief valve discharges hot and cold. */
    RELIEF_DRIPS_ALWAYS(Inspection.RELIEF_VALVE, "relief valve drips hot and cold"),
    /** Gas comes out of the gas valve. */
    GAS_AT_VALVE(Inspection.GAS_VALVE, "gas at the gas valve"),
    /** Nothing comes out of the gas valve. */
    NOTHING_AT_VALVE(Inspection.GAS_VALVE, "nothing at the gas valve"),
    /** Water, more than mist, comes out of the gas valve. */
    WATER_AT_VALVE(Inspection.GAS_VALVE, "water at the gas valve"),
    /** One end of the shell rings, the other is dull. */
    ONE_END_RINGS(Inspection.SHELL_SOUND, "one end of the shell rings"),
    /** The shell is dull all over. */
    DULL_ALL_OVER(Inspection.SHELL_SOUND, "shell dull all over"),
    /** The shell rings all over. */
    RINGS_ALL_OVER(Inspection.SHELL_SOUND, "shell rings all over"),
    /** The cold pressure stays. */
    PRESSURE_STAYS(Inspection.FEED, "cold pressure stays with the feed closed"),
    /** The cold pressure had risen with the feed open, and stays with it closed. */
    PRESSURE_CREEPS_UP(Inspection.FEED, "cold pressure creeps up with the feed open"),
    /** The cold pressure falls. */
    PRESSURE_FALLS(Inspection.FEED, "cold pressure falls with the feed closed"),
    /** Quiet, no gas at the vents. */
    TOP_QUIET(Inspection.TOP_OF_LOOP, "quiet at the top, no air at the vents"),
    /** Air noises or air at the vents. */
    AIR_AT_TOP(Inspection.TOP_OF_LOOP, "air at the top");

    private final Inspection inspection;
    private final String words;

    Sign(Inspection inspection, String words) {
        this.inspection = inspection;
        this.words = words;
    }

    /**
     * The inspection that shows it.
     *
     * @return the inspection
     */
    public Inspection inspection() {
        return inspection;
    }

    /**
     * The sign for people.
     *
     * @return such as {@code relief valve dry}
     */
    public String words() {
        return words;
    }
}
