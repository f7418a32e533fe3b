package org.ullage.support;

/** Published bases for the safe load of a threaded hanger rod; the allowable stress was raised in 2002, so an edition must be named. */
public enum RodLoads {
    /** The lowest of the others: to be used unless the edition is fixed. */
    LOWEST("lowest of all bases"),
    /** Root area x 9,000 psi: 12,000 psi less 25 %. */
    ROOT_AREA_RULE("root area x 9,000 psi"),
    /** MSS SP-58 and SP-69 before the 2002 edition. */
    MSS_BEFORE_2002("MSS SP-58 before 2002"),
    /** MSS SP-58 of 2002 and later. */
    MSS_2002_ON("MSS SP-58 of 2002 and later");

    private final String words;

    RodLoads(String words) {
        this.words = words;
    }

    /**
     * The basis in words.
     *
     * @return such as {@code MSS SP-58 before 2002}
     */
    @Override
    public String toString() {
        return words;
    }
}
