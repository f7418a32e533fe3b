package org.ullage.diagnosis;

/** What may be the matter with a vessel and its loop. */
public enum Hypothesis {
    /** Charge, fill and size as they should be. */
    HEALTHY(Family.SOUND, "healthy", "nothing to do but the yearly check of the charge"),
    /** Some gas is lost. */
    LOW_CHARGE(Family.CHARGE, "low charge", "isolate, drain to zero pressure, charge anew, soap the gas valve"),
    /** More gas in the vessel than wanted. */
    OVER_CHARGED(Family.CHARGE, "over-charged", "isolate, drain to zero pressure, bleed to the wanted charge"),
    /** The gas is gone or nearly so, or the membrane is torn. */
    WATERLOGGED(
            Family.CHARGE,
            "waterlogged",
            "drain and recharge; if water comes out of the gas valve, the vessel is to be replaced"),
    /** Charge in order, but the vessel is too small for its loop. */
    UNDERSIZED(Family.SIZE, "undersized", "size it again with the contents as they are; add a vessel"),
    /** More water in the loop than the fill allows. */
    OVER_FILLED(Family.TOO_MUCH_WATER, "over-filled", "let water out to the fill pressure, cold"),
    /** Less water in the loop than the fill asks for: lost or never filled. */
    SHORT_OF_WATER(Family.TOO_LITTLE_WATER, "short of water", "find the leak, top up to the fill pressure, cold"),
    /** The feed valve lets water through, or is set too high. */
    FEED_PASSING(Family.TOO_MUCH_WATER, "feed valve passing", "close the feed for a day and log the cold pressure"),
    /** Gas outside the vessel gives with the swing. */
    AIR_IN_LOOP(Family.AIR, "air in the loop", "vent, find where air comes in, top up"),
    /** All in order, but the hot pressure comes too close to the valve. */
    VALVE_MARGIN_SMALL(
            Family.SIZE,
            "valve margin too small",
            "a lower fill, a larger vessel, or another setting where the boiler allows it"),
    /** The loop was hotter than it was designed for. */
    HOTTER_THAN_DESIGNED(Family.TEMPERATURE, "hotter than designed", "lower the temperature or size for it"),
    /** The loop was colder than it was designed for. */
    COLDER_THAN_DESIGNED(
            Family.TEMPERATURE, "colder than designed", "fill for that temperature, so that a reserve remains");

    private final Family family;
    private final String word;
    private final String remedy;

    Hypothesis(Family family, String word, String remedy) {
        this.family = family;
        this.word = word;
        this.remedy = remedy;
    }

    /**
     * The hypothesis for people.
     *
     * @return such as {@code low charge}
     */
    public String word() {
        return word;
    }

    /**
     * The hypotheses it shares its first step with.
     *
     * @return the family
     */
    public Family family() {
        return family;
    }

    /**
     * What it calls for.
     *
     * @return in a few words
     */
    public String remedy() {
        return remedy;
    }

    /**
     * Whether it says that the vessel itself has failed: its gas is partly or wholly gone.
     *
     * @return whether gas is lost
     */
    public boolean isFailedVessel() {
        return this == LOW_CHARGE || this == WATERLOGGED;
    }
}
