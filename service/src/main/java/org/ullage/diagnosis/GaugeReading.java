package org.ullage.diagnosis;

import java.io.Serializable;
import org.ullage.operation.Reading;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;

/**
 * A reading of pressure and temperature with what gauge and thermometer may be off, either way. Immutable.
 *
 * @param reading pressure at the vessel's connection and mean temperature of the loop
 * @param pressureError greatest error of the gauge, above zero: class times span
 * @param temperatureError greatest error of the temperature, above zero
 */
public record GaugeReading(Reading reading, PressureDifference pressureError, TemperatureDifference temperatureError)
        implements Serializable {

    /**
     * Checks that the errors are above zero: no instrument is exact.
     *
     * @param reading the reading
     * @param pressureError greatest error of the gauge
     * @param temperatureError greatest error of the temperature
     * @throws OutOfRangeException if an error is zero or negative
     */
    public GaugeReading {
        if (pressureError.si() <= 0) {
            throw new OutOfRangeException(
                    "error of the gauge", pressureError.textInBothSystems(), "above zero", "give class times span");
        }
        if (temperatureError.si() <= 0) {
            throw new OutOfRangeException(
                    "error of the thermometer",
                    temperatureError.textInBothSystems(),
                    "above zero",
                    "give what the mean temperature may be off by");
        }
    }

    /**
     * A reading.
     *
     * @param pressure at the vessel's connection
     * @param pressureError greatest error of the gauge
     * @param temperature mean temperature of the loop
     * @param temperatureError greatest error of that
     * @return the reading
     * @throws OutOfRangeException if an error is zero or negative
     */
    public static GaugeReading of(
            GaugePressure pressure,
            PressureDifference pressureError,
            Temperature temperature,
            TemperatureDifference temperatureError) {
        return new GaugeReading(new Reading(pressure, temperature), pressureError, temperatureError);
    }
}
