package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A mass, zero or more. Immutable.
 */
public final class Mass extends AdditiveQuantity<Mass, Mass> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Mass, Mass> KIND = new Kind<>(
            "mass",
            Kind.Range.NOT_NEGATIVE,
            Mass::new,
            Units.KILOGRAM,
            Units.POUND,
            List.of(Units.KILOGRAM, Units.GRAM, Units.POUND));

    @JsonIgnore
    private Mass(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of kilograms.
     *
     * @param number the number of kilograms
     * @return the mass
     * @throws OutOfRangeException if the number is not allowed for a mass
     */
    public static Mass kilograms(double number) {
        return KIND.of(number, Units.KILOGRAM);
    }

    /**
     * Makes one from a number of pounds.
     *
     * @param number the number of pounds
     * @return the mass
     * @throws OutOfRangeException if the number is not allowed for a mass
     */
    public static Mass pounds(double number) {
        return KIND.of(number, Units.POUND);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the mass
     * @throws OutOfRangeException if the number is not allowed for a mass
     */
    public static Mass of(double number, Unit<Mass> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#KILOGRAM}.
     *
     * @param si the SI value
     * @return the mass
     * @throws OutOfRangeException if the value is not allowed for a mass
     */
    public static Mass ofSi(double si) {
        return new Mass(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 18 kg}
     * @return the mass
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a mass
     */
    @JsonCreator
    public static Mass parse(String text) {
        return KIND.parse(text);
    }

    /**
     * The weight of this mass under standard gravity.
     *
     * @return mass times {@link Units#STANDARD_GRAVITY}
     */
    public Force weight() {
        return Force.ofSi(si() * Units.STANDARD_GRAVITY.value());
    }

    @Override
    Kind<Mass, Mass> kind() {
        return KIND;
    }

    @Override
    Mass make(double si) {
        return new Mass(si);
    }
}
