package org.ullage.quantity;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * A unit of one dimension. The SI value is {@code (number - zero) x numerator / denominator + siAtZero} with numerator and
 * denominator whole numbers that a double holds exactly, so the factor is the exact rational and no rounded decimal. Only
 * temperature scales have a zero and an SI value there: both scales in use count from the ice point, so that 212 degF and
 * 100 degC are the same number of kelvins to the last digit.
 *
 * <p>Immutable. All units are constants of {@link Units}.
 *
 * @param <D> the dimension: the quantity type, or {@link Pressure} for the three kinds of pressure
 */
@SuppressWarnings("UnusedTypeParameter") // D is there for the compiler: it keeps units of other dimensions out
public final class Unit<D> implements Serializable {

    private static final long serialVersionUID = 1L;

    /** No two doubles share their first 17 significant decimal digits (IEEE 754). */
    private static final int MOST_DIGITS = 17;

    private final String symbol;
    private final String[] otherNames;
    private final double numerator;
    private final double denominator;
    private final double zero;
    private final double siAtZero;
    private final Source source;

    Unit(
            String symbol,
            double zero,
            long numerator,
            long denominator,
            double siAtZero,
            Source source,
            String... otherNames) {
        this.symbol = symbol;
        this.numerator = numerator;
        this.denominator = denominator;
        this.zero = zero;
        this.siAtZero = siAtZero;
        this.source = source;
        this.otherNames = otherNames.clone();
    }

    Unit(String symbol, long numerator, long denominator, Source source, String... otherNames) {
        this(symbol, 0, numerator, denominator, 0, source, otherNames);
    }

    /**
     * The symbol this library prints.
     *
     * @return such as {@code gal}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Other spellings that are read as this unit.
     *
     * @return the spellings, may be empty
     */
    public List<String> otherNames() {
        return List.of(otherNames);
    }

    /**
     * Where the factor comes from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * Converts a bare SI value: the calculation path, where {@link Quantity#in(Unit)} would look for the shortest decimal.
     *
     * @param si the value in the coherent SI unit
     * @return the number in this unit
     */
    public double numberOf(double si) {
        return scaled(si - siAtZero, denominator, numerator) + zero;
    }

    boolean isWritten(String text) {
        return symbol.equals(text) || otherNames().contains(text);
    }

    double toSi(double number) {
        return scaled(number - zero, numerator, denominator) + siAtZero;
    }

    /**
     * The shortest decimal that converts back to the same SI value, so that what was put in comes out again; infinite if a
     * double cannot hold it.
     */
    double fromSi(double si) {
        // First zero itself: next to it the shortest decimal of the nearest value would be some 6E-14.
        if (toSi(0) == si) {
            return 0;
        }
        double nearest = numberOf(si);
        if (!Double.isFinite(nearest)) {
            return nearest;
        }
        BigDecimal digits = new BigDecimal(nearest);
        for (int count = 1; count <= MOST_DIGITS; count++) {
            double shorter = digits.round(new MathContext(count)).doubleValue();
            if (toSi(shorter) == si) {
                return shorter;
            }
        }
        return nearest;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Unit<?> unit
                && unit.symbol.equals(symbol)
                && unit.numerator == numerator
                && unit.denominator == denominator
                && unit.zero == zero
                && unit.siAtZero == siAtZero;
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
    }

    /** Multiplies and divides, in the other order where the product would overflow although the result does not. */
    private static double scaled(double number, double factor, double divisor) {
        double product = number * factor;
        return Double.isFinite(product) ? product / divisor : number / divisor * factor;
    }

    /**
     * The symbol.
     *
     * @return the same as {@link #symbol()}
     */
    @Override
    public String toString() {
        return symbol;
    }
}
