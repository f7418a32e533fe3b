package org.ullage.provenance;

import java.io.Serializable;
import java.math.BigDecimal;

/**
 * A dimensioned or pure number together with the document it comes from, so that neither can be used without the other being
 * one call away. Immutable.
 *
 * @param symbol the usual symbol
 * @param value the number, finite
 * @param unit its unit, or {@code 1} for a pure number
 * @param source where it comes from
 */
public record Constant(String symbol, double value, String unit, Source source) implements Serializable {

    /**
     * Checks that the number is finite.
     *
     * @param symbol the usual symbol
     * @param value the number
     * @param unit its unit, or {@code 1}
     * @param source where it comes from
     * @throws IllegalArgumentException if the value is not finite
     */
    public Constant {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("constant " + symbol + " must be finite; it was " + value);
        }
    }

    /**
     * The number with all its digits and its unit.
     *
     * @return such as {@code 9.80665 m/s2}; a pure number has no unit
     */
    public String text() {
        BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        String number = exact.scale() < 0 ? exact.toPlainString() : exact.toString();
        return unit.equals("1") ? number : number + " " + unit;
    }

    /**
     * The constant as text with its source.
     *
     * @return such as {@code g_n = 9.80665 m/s2 [PUBLISHED] ...}
     */
    @Override
    public String toString() {
        return symbol + " = " + text() + " " + source;
    }
}
