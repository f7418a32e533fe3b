package org.ullage.operation;

/** What sets the pressure of a closed loop. */
public enum LoopState {
    /** The gas of the vessels: the usual state. */
    CUSHIONED("the gas of the vessels sets the pressure"),
    /**
     * The vessels can take no more; only the compression of the liquid, what gas is left and the stretch of the pipe give room, and the
     * pressure rises by bars for each kelvin.
     */
    LIQUID_FULL("the vessels can take no more water and the pressure rises by bars for each kelvin"),
    /** The vessels hold no water: the gas does not reach the loop any more and nothing sets its pressure. */
    VESSELS_EMPTY("the vessels are empty of water: the pressure falls away and air may be drawn in at the top"),
    /** The pressure would be below the vapour pressure: vapour forms and pushes water out. */
    BOILING("the pressure is below the vapour pressure: the loop would boil");

    private final String words;

    LoopState(String words) {
        this.words = words;
    }

    /**
     * The state in words.
     *
     * @return a clause
     */
    @Override
    public String toString() {
        return words;
    }
}
