package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A temperature on the thermodynamic scale, above absolute zero. Immutable.
 */
public final class Temperature extends Quantity<Temperature, Temperature> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Temperature, Temperature> KIND = new Kind<>(
            "temperature",
            Kind.Range.POSITIVE,
            Temperature::new,
            Units.CELSIUS,
            Units.FAHRENHEIT,
            List.of(Units.KELVIN, Units.CELSIUS, Units.FAHRENHEIT, Units.RANKINE));

    @JsonIgnore
    private Temperature(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of degrees Celsius.
     *
     * @param number the number of degrees Celsius
     * @return the temperature
     * @throws OutOfRangeException if the number is not allowed for a temperature
     */
    public static Temperature celsius(double number) {
        return KIND.of(number, Units.CELSIUS);
    }

    /**
     * Makes one from a number of degrees Fahrenheit.
     *
     * @param number the number of degrees Fahrenheit
     * @return the temperature
     * @throws OutOfRangeException if the number is not allowed for a temperature
     */
    public static Temperature fahrenheit(double number) {
        return KIND.of(number, Units.FAHRENHEIT);
    }

    /**
     * Makes one from a number of kelvins.
     *
     * @param number the number of kelvins
     * @return the temperature
     * @throws OutOfRangeException if the number is not allowed for a temperature
     */
    public static Temperature kelvins(double number) {
        return KIND.of(number, Units.KELVIN);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the temperature
     * @throws OutOfRangeException if the number is not allowed for a temperature
     */
    public static Temperature of(double number, Unit<Temperature> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#KELVIN}.
     *
     * @param si the SI value
     * @return the temperature
     * @throws OutOfRangeException if the value is not allowed for a temperature
     */
    public static Temperature ofSi(double si) {
        return new Temperature(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 180 degF}
     * @return the temperature
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a temperature
     */
    @JsonCreator
    public static Temperature parse(String text) {
        return KIND.parse(text);
    }

    /**
     * A higher temperature.
     *
     * @param rise the temperature difference to add
     * @return this temperature raised by the difference
     * @throws OutOfRangeException if the result is at or below absolute zero
     */
    public Temperature plus(TemperatureDifference rise) {
        return new Temperature(si() + rise.si());
    }

    /**
     * How far this temperature is above another.
     *
     * @param other the temperature to compare with
     * @return the difference, negative if this is the lower one
     */
    public TemperatureDifference minus(Temperature other) {
        return TemperatureDifference.ofSi(si() - other.si());
    }

    @Override
    Kind<Temperature, Temperature> kind() {
        return KIND;
    }
}
