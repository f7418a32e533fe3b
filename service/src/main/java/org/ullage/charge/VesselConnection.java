package org.ullage.charge;

/** How a vessel can be parted from its loop, which decides how its charge is checked. */
public enum VesselConnection {
    /** A valve that can be locked open, with a drain on the vessel's side; also a cap valve that has both. */
    LOCKABLE_VALVE_WITH_DRAIN("lockable valve with a drain at the vessel"),
    /** No valve of its own: the loop's valves must be closed and the vessel taken off, or the loop drained. */
    WITHOUT_VALVE("no valve at the vessel");

    private final String words;

    VesselConnection(String words) {
        this.words = words;
    }

    /**
     * The connection in words.
     *
     * @return the words
     */
    @Override
    public String toString() {
        return words;
    }
}
