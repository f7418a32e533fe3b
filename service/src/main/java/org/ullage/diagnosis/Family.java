package org.ullage.diagnosis;

/** Hypotheses that call for the same first step, so that a diagnosis may be sure of it before it is sure which of them is true. */
public enum Family {
    /** Nothing is the matter. */
    SOUND("all is in order"),
    /** Gas lost, gone or too much: isolate, drain, measure and set the charge. */
    CHARGE("the charge is wrong"),
    /** Filled too high or fed: let water out and watch the feed. */
    TOO_MUCH_WATER("there is too much water in the loop"),
    /** Water missing: find where, top up. */
    TOO_LITTLE_WATER("there is too little water in the loop"),
    /** Gas outside the vessel: vent. */
    AIR("there is air in the loop"),
    /** Vessel and relief valve do not fit the loop: size again. */
    SIZE("the vessel is too small for its loop and valve"),
    /** The loop is not run as it was designed. */
    TEMPERATURE("the loop is run outside its design");

    private final String words;

    Family(String words) {
        this.words = words;
    }

    /**
     * The family for people.
     *
     * @return such as {@code the charge is wrong}
     */
    public String words() {
        return words;
    }
}
