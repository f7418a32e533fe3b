package org.ullage.examples.size;

/** A line that cannot be answered. The message is the text of its error column. */
final class BadLineException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    BadLineException(String message) {
        super(message);
    }

    /** A refusal of what stands in a column. */
    static BadLineException in(Column column, String message) {
        return new BadLineException(column.word() + ": " + message);
    }

    /** A refusal by the library of what stands in a column. */
    static BadLineException in(Column column, IllegalArgumentException refusal) {
        return in(column, String.valueOf(refusal.getMessage()));
    }
}
