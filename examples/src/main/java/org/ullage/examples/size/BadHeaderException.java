package org.ullage.examples.size;

/** A header that does not say what the columns are, so that no line can be answered. */
final class BadHeaderException extends Exception {

    private static final long serialVersionUID = 1L;

    BadHeaderException(String message) {
        super(message);
    }
}
