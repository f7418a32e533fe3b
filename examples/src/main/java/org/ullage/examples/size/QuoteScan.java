package org.ullage.examples.size;

/** Follows the double quotes of RFC 4180 through a record, to know whether a line break ends it or belongs to a cell. */
final class QuoteScan {

    private Place place = Place.CELL_START;

    /** Whether text follows a closing quote, which RFC 4180 does not know. */
    private boolean broken;

    /** Where in a record the scan stands. */
    private enum Place {
        CELL_START,
        PLAIN,
        QUOTED,
        AFTER_QUOTE;

        Place after(char next) {
            if (this == QUOTED) {
                return next == '"' ? AFTER_QUOTE : QUOTED;
            }
            if (next == ',') {
                return CELL_START;
            }
            // A quote after a closing quote is a doubled one. Inside a plain cell it is just a character here.
            return next == '"' && this != PLAIN ? QUOTED : PLAIN;
        }
    }

    /** Reads on. */
    void read(String text) {
        for (int i = 0; i < text.length(); i++) {
            char next = text.charAt(i);
            broken |= place == Place.AFTER_QUOTE && ",\"\r\n".indexOf(next) < 0;
            place = place.after(next);
        }
    }

    /** Whether the quotes so far are in order. */
    boolean sound() {
        return !broken && !open();
    }

    /** Whether a quoted cell is still open. */
    boolean open() {
        return place == Place.QUOTED;
    }
}
