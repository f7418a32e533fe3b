package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A length or a height. May be negative, as the height of a point below another is. Immutable.
 */
public final class Length extends AdditiveQuantity<Length, Length> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Length, Length> KIND = new Kind<>(
            "length",
            Kind.Range.ANY,
            Length::new,
            Units.METRE,
            Units.FOOT,
            List.of(Units.METRE, Units.MILLIMETRE, Units.FOOT, Units.INCH));

    @JsonIgnore
    private Length(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of metres.
     *
     * @param number the number of metres
     * @return the length
     * @throws OutOfRangeException if the number is not allowed for a length
     */
    public static Length metres(double number) {
        return KIND.of(number, Units.METRE);
    }

    /**
     * Makes one from a number of millimetres.
     *
     * @param number the number of millimetres
     * @return the length
     * @throws OutOfRangeException if the number is not allowed for a length
     */
    public static Length millimetres(double number) {
        return KIND.of(number, Units.MILLIMETRE);
    }

    /**
     * Makes one from a number of feet.
     *
     * @param number the number of feet
     * @return the length
     * @throws OutOfRangeException if the number is not allowed for a length
     */
    public static Length feet(double number) {
        return KIND.of(number, Units.FOOT);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the length
     * @throws OutOfRangeException if the number is not allowed for a length
     */
    public static Length of(double number, Unit<Length> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#METRE}.
     *
     * @param si the SI value
     * @return the length
     * @throws OutOfRangeException if the value is not allowed for a length
     */
    public static Length ofSi(double si) {
        return new Length(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 9 m}
     * @return the length
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a length
     */
    @JsonCreator
    public static Length parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Length, Length> kind() {
        return KIND;
    }

    @Override
    Length make(double si) {
        return new Length(si);
    }
}
