package org.ullage.reference;

import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Quantity;

/**
 * What an implementation says to a question. Immutable.
 */
public final class Answer {

    private final @Nullable Class<?> type;
    private final double si;

    private Answer(@Nullable Class<?> type, double si) {
        this.type = type;
        this.si = si;
    }

    /**
     * An answer with a unit.
     *
     * @param quantity such as {@code Volume.gallons(344)}
     * @return the answer
     */
    public static Answer of(Quantity<?, ?> quantity) {
        return new Answer(quantity.getClass(), quantity.si());
    }

    /**
     * An answer without a quantity type: a ratio (not percent), a specific enthalpy in J/kg, a heat capacity in J/(kg K), an
     * expansivity in 1/K, a compressibility in 1/Pa or a slope in Pa/K.
     *
     * @param number the number
     * @return the answer
     */
    public static Answer ofNumber(double number) {
        return new Answer(null, number);
    }

    /**
     * The value in coherent SI.
     *
     * @return the number, which a wrong implementation may have made infinite or not a number
     */
    public double si() {
        return si;
    }

    /** An answer of the same kind with another value. */
    Answer withSi(double other) {
        return new Answer(type, other);
    }

    boolean isA(Measure measure) {
        return type == measure.type();
    }

    String typeName() {
        return type == null ? "a bare number" : type.getSimpleName();
    }
}
