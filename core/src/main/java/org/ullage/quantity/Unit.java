package org.ullage.quantity;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * A unit of one dimension. The SI value is {@code (number + offset) x numerator / denominator} with numerator and denominator
 * whole numbers that a double holds exactly, so the factor is the exact rational and no rounded decimal.
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
    private final List<String> otherNames;
    private final double numerator;
    private final double denominator;
    private final double offset;
    private final Source source;

    Unit(String symbol, long numerator, long denominator, double offset, Source source, String... otherNames) {
        this.symbol = symbol;
        this.numerator = numerator;
        this.denominator = denominator;
        this.offset = offset;
        this.source = source;
        this.otherNames = List.of(otherNames);
    }

    Unit(String symbol, long numerator, long denominator, Source source, String... otherNames) {
        this(symbol, numerator, denominator, 0, source, otherNames);
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
        return otherNames;
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
     * Converts a bare SI value with one rounding: the calculation path, where {@link Quantity#in(Unit)} would look for the
     * shortest decimal.
     *
     * @param si the value in the coherent SI unit
     * @return the number in this unit
     */
    public double numberOf(double si) {
        return si * denominator / numerator - offset;
    }

    boolean isWritten(String text) {
        return symbol.equals(text) || otherNames.contains(text);
    }

    double toSi(double number) {
        return (number + offset) * numerator / denominator;
    }

    /** The shortest decimal that converts back to the same SI value, so that what was put in comes out again. */
    double fromSi(double si) {
        double nearest = numberOf(si);
        if (!Double.isFinite(nearest)) {
            nearest = si / numerator * denominator - offset;
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
                && unit.offset == offset;
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
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
