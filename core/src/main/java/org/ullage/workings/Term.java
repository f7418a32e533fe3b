package org.ullage.workings;

import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Constant;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;

/**
 * A symbol of a formula with its value, printable in either unit system. Immutable.
 */
public final class Term implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Digits that let a reader redo the arithmetic and meet the printed result. */
    private static final int WORKING_DIGITS = 6;

    private final String symbol;
    private final double number;
    private final @Nullable Quantity<?, ?> quantity;
    private final String metric;
    private final String inchPound;

    private Term(String symbol, double number, @Nullable Quantity<?, ?> quantity, String metric, String inchPound) {
        if (symbol.isBlank()) {
            throw new IllegalArgumentException("a term must have a symbol; it was blank for " + metric);
        }
        this.symbol = symbol;
        this.number = number;
        this.quantity = quantity;
        this.metric = metric;
        this.inchPound = inchPound;
    }

    /**
     * A quantity, printed in the unit system asked for.
     *
     * @param symbol its symbol in the formula
     * @param quantity its value
     * @return the term
     */
    public static Term of(String symbol, Quantity<?, ?> quantity) {
        return of(symbol, quantity, WORKING_DIGITS);
    }

    /**
     * A quantity, printed in the unit system asked for with a number of digits, because its small changes matter.
     *
     * @param symbol its symbol in the formula
     * @param quantity its value
     * @param digits significant digits to print
     * @return the term
     */
    public static Term of(String symbol, Quantity<?, ?> quantity, int digits) {
        return new Term(
                symbol,
                quantity.si(),
                quantity,
                quantity.text(UnitSystem.SI, digits),
                quantity.text(UnitSystem.IP, digits));
    }

    /**
     * A quantity that the formula wants in one unit, whatever the reader prefers.
     *
     * @param unit the unit the formula is written for
     * @param symbol its symbol in the formula
     * @param quantity its value
     * @param <Q> the quantity type
     * @param <D> its dimension
     * @return the term
     */
    public static <Q extends Quantity<Q, D>, D> Term in(Unit<D> unit, String symbol, Q quantity) {
        String text = quantity.text(unit, WORKING_DIGITS);
        return new Term(symbol, quantity.si(), quantity, text, text);
    }

    /**
     * A quantity in a unit of the trade for each reader, where the usual unit of its kind would be too large or too small.
     *
     * @param metric the unit for metric readers
     * @param inchPound the unit for inch-pound readers
     * @param symbol its symbol in the formula
     * @param quantity its value
     * @param <Q> the quantity type
     * @param <D> its dimension
     * @return the term
     */
    public static <Q extends Quantity<Q, D>, D> Term in(Unit<D> metric, Unit<D> inchPound, String symbol, Q quantity) {
        return new Term(
                symbol,
                quantity.si(),
                quantity,
                quantity.text(metric, WORKING_DIGITS),
                quantity.text(inchPound, WORKING_DIGITS));
    }

    /**
     * A pure number.
     *
     * @param symbol its symbol in the formula
     * @param number its value, finite
     * @return the term
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Term number(String symbol, double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(symbol + " must be a finite number; it was " + number);
        }
        String text = Digits.significant(number, WORKING_DIGITS);
        return new Term(symbol, number, null, text, text);
    }

    /**
     * A cited constant.
     *
     * @param constant the constant
     * @return the term
     */
    public static Term of(Constant constant) {
        return new Term(constant.symbol(), constant.value(), null, constant.text(), constant.text());
    }

    /**
     * The symbol.
     *
     * @return as in the formula
     */
    public String symbol() {
        return symbol;
    }

    /**
     * The value as a number: in the coherent SI unit if it is a quantity.
     *
     * @return the number
     */
    public double number() {
        return number;
    }

    /**
     * The value as a quantity.
     *
     * @return the quantity, or null for a pure number or a cited constant
     */
    public @Nullable Quantity<?, ?> quantity() {
        return quantity;
    }

    /**
     * The value with its unit.
     *
     * @param system metric or inch-pound
     * @return such as {@code 24.7 psi abs}
     */
    public String text(UnitSystem system) {
        return system == UnitSystem.SI ? metric : inchPound;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Term that
                && symbol.equals(that.symbol)
                && Double.compare(number, that.number) == 0
                && Objects.equals(quantity, that.quantity)
                && metric.equals(that.metric)
                && inchPound.equals(that.inchPound);
    }

    @Override
    public int hashCode() {
        return Objects.hash(symbol, number, quantity, metric, inchPound);
    }

    /**
     * The symbol with its metric value.
     *
     * @return such as {@code p_f = 3.71 bar abs}
     */
    @Override
    public String toString() {
        return symbol + " = " + metric;
    }
}
