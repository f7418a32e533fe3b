package org.ullage.examples.contents;

/** A file without a sense: not CSV, not UTF-8, or with a header that does not say what the columns are. */
final class BadFileException extends Exception {

    private static final long serialVersionUID = 1L;

    BadFileException(String message) {
        super(message);
    }
}
