package org.ullage.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** How numbers are written for people: rounded half-up, without trailing zeros, and scientific only when extreme. */
public final class Digits {

    /** Decimal exponents written without a power of ten, lowest and highest. */
    private static final int PLAIN_FROM = -5;

    private static final int PLAIN_TO = 9;

    private Digits() {}

    /**
     * A number rounded to significant digits.
     *
     * @param number a finite number
     * @param significantDigits how many digits to keep, 1 or more
     * @return such as {@code 0.00100216}, {@code 3000} or {@code 1.2E-7}
     * @throws IllegalArgumentException if the number is not finite or no digit is kept
     */
    public static String significant(double number, int significantDigits) {
        if (significantDigits < 1) {
            throw new IllegalArgumentException("significant digits must be 1 or more; it was " + significantDigits);
        }
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("only a finite number can be written; it was " + number);
        }
        // Through the shortest decimal text: the exact binary value would round 0.125 and 0.135 by different rules.
        BigDecimal value = new BigDecimal(Double.toString(number))
                .round(new MathContext(significantDigits))
                .stripTrailingZeros();
        int exponent = value.precision() - value.scale() - 1;
        boolean plain = value.signum() == 0 || (exponent >= PLAIN_FROM && exponent <= PLAIN_TO);
        return plain ? value.toPlainString() : value.toString();
    }

    /** How many significant digits the shortest decimal of a finite number has. */
    static int count(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().precision();
    }
}
