package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonValue;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * A physical quantity: one finite number in the coherent SI unit of its kind. Immutable; equal when the kind and the SI value
 * are the same, whatever unit it was made from.
 *
 * @param <Q> the quantity type itself
 * @param <D> the dimension of its units: the type itself, or {@link Pressure} for the three kinds of pressure
 */
public abstract class Quantity<Q extends Quantity<Q, D>, D> implements Comparable<Q>, Serializable {

    private static final long serialVersionUID = 1L;

    /** Digits shown for a value that has no short exact form. */
    private static final int SENSIBLE_DIGITS = 4;

    /** A value with no more exact digits than this is shown as it was given. */
    private static final int SHORT_DIGITS = 6;

    private final double si;

    Quantity(Kind<Q, D> kind, double si) {
        this.si = kind.checked(si) + 0.0;
    }

    abstract Kind<Q, D> kind();

    /**
     * The value in the coherent SI unit: the path for calculations, free of conversions.
     *
     * @return pascals, kelvins, cubic metres, metres, kilograms, kilograms per cubic metre, cubic metres per kilogram, watts,
     *     newtons, square metres, newton metres, or a fraction of one
     */
    public final double si() {
        return si;
    }

    /**
     * The value in a unit: the shortest decimal that converts back to this quantity. Numbers of up to 15 significant digits
     * come out exactly as they were put in (temperatures: to 1e-12 K).
     *
     * @param unit a unit of this dimension
     * @return the number in that unit, finite
     * @throws OutOfRangeException if the number would be too large for a double
     */
    public final double in(Unit<D> unit) {
        double number = unit.fromSi(si);
        if (!Double.isFinite(number)) {
            throw new OutOfRangeException(
                    kind().name(),
                    si + " " + kind().coherent() + kind().suffix(),
                    "small enough for a finite number of " + unit,
                    "read it in a larger unit");
        }
        return number;
    }

    /**
     * The quantity for people: as it was given if that takes at most six digits, else rounded to four significant digits.
     *
     * @param unit the unit to print in
     * @return such as {@code 12 psi} or {@code 24.7 psi abs}
     */
    public final String text(Unit<D> unit) {
        int digits = Digits.count(in(unit));
        return text(unit, digits <= SHORT_DIGITS ? digits : SENSIBLE_DIGITS);
    }

    /**
     * The quantity for people, rounded half-up to a number of significant digits, without trailing zeros.
     *
     * @param unit the unit to print in
     * @param significantDigits how many digits to keep, 1 or more
     * @return such as {@code 0.00100216 m3/kg}
     * @throws IllegalArgumentException if no digit is kept
     */
    public final String text(Unit<D> unit, int significantDigits) {
        return Digits.significant(in(unit), significantDigits) + " " + unit + kind().suffix();
    }

    /**
     * The quantity for people in the usual unit of a system.
     *
     * @param system metric or inch-pound
     * @return as {@link #text(Unit)}
     */
    public final String text(UnitSystem system) {
        return text(kind().preferred(system));
    }

    /**
     * The quantity for people in the usual unit of a system, rounded to a number of significant digits.
     *
     * @param system metric or inch-pound
     * @param significantDigits how many digits to keep, 1 or more
     * @return as {@link #text(Unit, int)}
     */
    public final String text(UnitSystem system, int significantDigits) {
        return text(kind().preferred(system), significantDigits);
    }

    /**
     * The quantity for people who may think in either system, as refusals and warnings print it.
     *
     * @return such as {@code 80 degC (176 degF)}
     */
    public final String textInBothSystems() {
        return text(UnitSystem.SI) + " (" + text(UnitSystem.IP) + ")";
    }

    /**
     * The quantity as text that parses back to an equal value: in the usual metric unit where a decimal does so, otherwise in
     * the coherent SI unit.
     *
     * @return such as {@code 1200.0 L}
     */
    @JsonValue
    @Override
    public final String toString() {
        Unit<D> usual = kind().preferred(UnitSystem.SI);
        double number = usual.fromSi(si);
        String text = usual.toSi(number) == si ? number + " " + usual : si + " " + kind().coherent();
        return text + kind().suffix();
    }

    @Override
    public final int compareTo(Q other) {
        return Double.compare(si, other.si());
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Quantity<?, ?> quantity && quantity.kind() == kind() && quantity.si == si;
    }

    @Override
    public final int hashCode() {
        return Double.hashCode(si);
    }

    /** A stream does not pass through the constructor, so the range is checked here again. */
    private void readObject(ObjectInputStream stream) throws IOException, ClassNotFoundException {
        stream.defaultReadObject();
        try {
            kind().checked(si);
        } catch (OutOfRangeException refused) {
            throw (InvalidObjectException) new InvalidObjectException(refused.getMessage()).initCause(refused);
        }
    }
}
