package org.ullage.support;

import org.ullage.quantity.Area;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.workings.Term;

/** How this room prints: lengths of supports in mm and in, areas of sections in mm2 and in2, all else as usual. */
final class SupportText {

    /** Digits of a result for people. */
    private static final int DIGITS = 4;

    private SupportText() {}

    static String of(Quantity<?, ?> quantity, UnitSystem system) {
        if (quantity instanceof Length length) {
            return length.text(system == UnitSystem.SI ? Units.MILLIMETRE : Units.INCH, DIGITS);
        }
        return quantity.text(system, DIGITS);
    }

    static Term term(String symbol, Length length) {
        return Term.in(Units.MILLIMETRE, Units.INCH, symbol, length);
    }

    static Term term(String symbol, Area section) {
        return Term.in(Units.SQUARE_MILLIMETRE, Units.SQUARE_INCH, symbol, section);
    }

    static String both(Length length) {
        return length.text(Units.MILLIMETRE) + " (" + length.text(Units.INCH) + ")";
    }

    /** @throws OutOfRangeException if the share is no finite number of percent */
    static String percent(double share) {
        if (Math.abs(share * 100) > Double.MAX_VALUE) {
            throw new OutOfRangeException(
                    "use of what is allowed",
                    String.valueOf(share),
                    "a finite number of percent",
                    "check the allowed value and its unit");
        }
        return Digits.significant(share * 100, DIGITS - 1) + " %";
    }
}
