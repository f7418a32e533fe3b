package org.ullage.report;

import java.time.LocalDate;
import org.ullage.quantity.Digits;
import org.ullage.quantity.OutOfRangeException;

/** The numbers of a chart: which are allowed, and how they are written. */
final class Figures {

    private static final int DIGITS = 4;

    /** What an axis can still label, either sign. */
    private static final double LARGEST = 1e15;

    private static final int LAST_YEAR = 3000;

    private Figures() {}

    /** Refuses what cannot be drawn. */
    static double checked(String what, double number) {
        if (!(Math.abs(number) <= LARGEST)) {
            throw new OutOfRangeException(
                    what,
                    Double.toString(number),
                    "a finite number from -1e15 to 1e15",
                    "leave out what was not measured, or take a larger unit");
        }
        return number;
    }

    /** Refuses what a calendar cannot label. */
    static double checkedDay(double day) {
        double first = LocalDate.of(1, 1, 1).toEpochDay();
        double last = LocalDate.of(LAST_YEAR, 1, 1).toEpochDay();
        if (!(day >= first && day < last)) {
            throw new OutOfRangeException(
                    "day " + day, "since 1970-01-01", "in the years 1 to " + (LAST_YEAR - 1), "check the date");
        }
        return day;
    }

    static String withUnit(double number, String unit) {
        String digits = Digits.significant(number, DIGITS);
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    static String date(double day) {
        return LocalDate.ofEpochDay((long) Math.floor(day)).toString();
    }
}
