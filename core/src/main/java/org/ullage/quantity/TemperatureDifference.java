package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A difference of two temperatures. May be negative. Immutable.
 */
public final class TemperatureDifference extends AdditiveQuantity<TemperatureDifference, TemperatureDifference> {

    private static final long serialVersionUID = 1L;

    private static final Kind<TemperatureDifference, TemperatureDifference> KIND = new Kind<>(
            "temperature difference",
            Kind.Range.ANY,
            TemperatureDifference::new,
            Units.KELVIN_DIFFERENCE,
            Units.FAHRENHEIT_DIFFERENCE,
            List.of(
                    Units.KELVIN_DIFFERENCE,
                    Units.CELSIUS_DIFFERENCE,
                    Units.FAHRENHEIT_DIFFERENCE,
                    Units.RANKINE_DIFFERENCE));

    @JsonIgnore
    private TemperatureDifference(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of kelvins.
     *
     * @param number the number of kelvins
     * @return the temperature difference
     * @throws OutOfRangeException if the number is not allowed for a temperature difference
     */
    public static TemperatureDifference kelvins(double number) {
        return KIND.of(number, Units.KELVIN_DIFFERENCE);
    }

    /**
     * Makes one from a number of Fahrenheit degrees.
     *
     * @param number the number of Fahrenheit degrees
     * @return the temperature difference
     * @throws OutOfRangeException if the number is not allowed for a temperature difference
     */
    public static TemperatureDifference fahrenheitDegrees(double number) {
        return KIND.of(number, Units.FAHRENHEIT_DIFFERENCE);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the temperature difference
     * @throws OutOfRangeException if the number is not allowed for a temperature difference
     */
    public static TemperatureDifference of(double number, Unit<TemperatureDifference> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#KELVIN_DIFFERENCE}.
     *
     * @param si the SI value
     * @return the temperature difference
     * @throws OutOfRangeException if the value is not allowed for a temperature difference
     */
    public static TemperatureDifference ofSi(double si) {
        return new TemperatureDifference(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 40 K}
     * @return the temperature difference
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a temperature difference
     */
    @JsonCreator
    public static TemperatureDifference parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<TemperatureDifference, TemperatureDifference> kind() {
        return KIND;
    }

    @Override
    TemperatureDifference make(double si) {
        return new TemperatureDifference(si);
    }
}
