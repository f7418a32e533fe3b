package org.ullage.fuzz;

/** What a target raises when a case came to no answer in a documented way that is no exception of the library. */
final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Refused(String why) {
        super(why);
    }
}
