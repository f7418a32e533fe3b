package org.ullage.fuzz;

/** What no answer and no refusal may be. */
final class Fault extends AssertionError {

    private static final long serialVersionUID = 1L;

    Fault(String message) {
        super(message);
    }

    Fault(String message, Throwable cause) {
        super(message, cause);
    }
}
