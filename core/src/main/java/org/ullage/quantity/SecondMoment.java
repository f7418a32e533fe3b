package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The second moment of area of a section, also called its moment of inertia: what its stiffness in bending rests on. Immutable.
 */
public final class SecondMoment extends AdditiveQuantity<SecondMoment, SecondMoment> {

    private static final long serialVersionUID = 1L;

    private static final Kind<SecondMoment, SecondMoment> KIND = new Kind<>(
            "second moment of area",
            Kind.Range.POSITIVE,
            SecondMoment::new,
            Units.QUARTIC_CENTIMETRE,
            Units.QUARTIC_INCH,
            List.of(Units.QUARTIC_METRE, Units.QUARTIC_CENTIMETRE, Units.QUARTIC_INCH));

    @JsonIgnore
    private SecondMoment(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of centimetres to the fourth.
     *
     * @param number the number of centimetres to the fourth
     * @return the second moment of area
     * @throws OutOfRangeException if the number is not allowed for a second moment of area
     */
    public static SecondMoment quarticCentimetres(double number) {
        return KIND.of(number, Units.QUARTIC_CENTIMETRE);
    }

    /**
     * Makes one from a number of inches to the fourth.
     *
     * @param number the number of inches to the fourth
     * @return the second moment of area
     * @throws OutOfRangeException if the number is not allowed for a second moment of area
     */
    public static SecondMoment quarticInches(double number) {
        return KIND.of(number, Units.QUARTIC_INCH);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the second moment of area
     * @throws OutOfRangeException if the number is not allowed for a second moment of area
     */
    public static SecondMoment of(double number, Unit<SecondMoment> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#QUARTIC_METRE}.
     *
     * @param si the SI value
     * @return the second moment of area
     * @throws OutOfRangeException if the value is not allowed for a second moment of area
     */
    public static SecondMoment ofSi(double si) {
        return new SecondMoment(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 0.185 in4}
     * @return the second moment of area
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a second moment of area
     */
    @JsonCreator
    public static SecondMoment parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<SecondMoment, SecondMoment> kind() {
        return KIND;
    }

    @Override
    SecondMoment make(double si) {
        return new SecondMoment(si);
    }
}
