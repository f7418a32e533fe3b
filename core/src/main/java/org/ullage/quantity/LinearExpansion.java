package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The linear thermal expansion coefficient of a solid, zero or more. Three times it is the volume coefficient of a pipe that
 * expands freely. Immutable.
 */
public final class LinearExpansion extends Quantity<LinearExpansion, LinearExpansion> {

    private static final long serialVersionUID = 1L;

    private static final Kind<LinearExpansion, LinearExpansion> KIND = new Kind<>(
            "linear expansion coefficient",
            Kind.Range.NOT_NEGATIVE,
            LinearExpansion::new,
            Units.PER_KELVIN,
            Units.PER_FAHRENHEIT_DEGREE,
            List.of(Units.PER_KELVIN, Units.PER_FAHRENHEIT_DEGREE));

    @JsonIgnore
    private LinearExpansion(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of reciprocal kelvins.
     *
     * @param number the number of reciprocal kelvins
     * @return the linear expansion coefficient
     * @throws OutOfRangeException if the number is not allowed for a linear expansion coefficient
     */
    public static LinearExpansion perKelvin(double number) {
        return KIND.of(number, Units.PER_KELVIN);
    }

    /**
     * Makes one from a number of reciprocal Fahrenheit degrees.
     *
     * @param number the number of reciprocal Fahrenheit degrees
     * @return the linear expansion coefficient
     * @throws OutOfRangeException if the number is not allowed for a linear expansion coefficient
     */
    public static LinearExpansion perFahrenheitDegree(double number) {
        return KIND.of(number, Units.PER_FAHRENHEIT_DEGREE);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the linear expansion coefficient
     * @throws OutOfRangeException if the number is not allowed for a linear expansion coefficient
     */
    public static LinearExpansion of(double number, Unit<LinearExpansion> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#PER_KELVIN}.
     *
     * @param si the SI value
     * @return the linear expansion coefficient
     * @throws OutOfRangeException if the value is not allowed for a linear expansion coefficient
     */
    public static LinearExpansion ofSi(double si) {
        return new LinearExpansion(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 6.5e-6 1/degF}
     * @return the linear expansion coefficient
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a linear expansion coefficient
     */
    @JsonCreator
    public static LinearExpansion parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<LinearExpansion, LinearExpansion> kind() {
        return KIND;
    }
}
