package org.ullage.examples.file;

/** A file without a sense: not to be had, not CSV, not UTF-8, or with a header that does not say what the columns are. */
public final class BadFileException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the refusal.
     *
     * @param message why, in words
     */
    public BadFileException(String message) {
        super(message);
    }
}
