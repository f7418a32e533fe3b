package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.io.Serializable;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A day, written year first: {@code 2026-11-25}. In a file it is that text, whatever modules the reader of the file has. Immutable.
 *
 * @param date the day, with a year of four digits
 */
public record RecordDate(LocalDate date) implements Comparable<RecordDate>, Serializable {

    private static final String FORM = "[0-9]{4}-[0-9]{2}-[0-9]{2}";

    /**
     * Checks the year.
     *
     * @param date the day
     * @throws OutOfRangeException if its year does not have four digits
     */
    public RecordDate {
        if (!date.toString().matches(FORM)) {
            throw refused(date.toString());
        }
    }

    /**
     * Reads a day.
     *
     * @param text such as {@code 2026-11-25}
     * @return the day
     * @throws OutOfRangeException if the text is not a day of the calendar in that form
     */
    @JsonCreator
    public static RecordDate parse(String text) {
        try {
            return new RecordDate(LocalDate.parse(text));
        } catch (DateTimeParseException unreadable) {
            throw refused(PlainText.quoted(text));
        }
    }

    private static OutOfRangeException refused(String value) {
        return new OutOfRangeException(
                "date", value, "a day of the calendar written year-month-day", "write it as in 2026-11-25");
    }

    @Override
    public int compareTo(RecordDate other) {
        return date.compareTo(other.date);
    }

    /**
     * The day as text.
     *
     * @return such as {@code 2026-11-25}
     */
    @JsonValue
    @Override
    public String toString() {
        return date.toString();
    }
}
