package org.ullage.operation;

import java.io.Serializable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * How far the values behind {@link TwoReadings} may be off, either way; zero for a value taken as exact. Immutable.
 *
 * @param pressure of each of the two pressure readings
 * @param temperature of each of the two temperature readings
 * @param charge of the gas charge
 * @param nominal of the vessel's nominal volume
 */
public record ReadingErrors(
        PressureDifference pressure, TemperatureDifference temperature, PressureDifference charge, Volume nominal)
        implements Serializable {

    /**
     * Checks the signs.
     *
     * @param pressure of each pressure reading
     * @param temperature of each temperature reading
     * @param charge of the gas charge
     * @param nominal of the nominal volume
     * @throws OutOfRangeException if one is negative
     */
    public ReadingErrors {
        require("error of the pressure readings", pressure.text(UnitSystem.SI), pressure.si());
        require("error of the temperature readings", temperature.text(UnitSystem.SI), temperature.si());
        require("error of the gas charge", charge.text(UnitSystem.SI), charge.si());
        require("error of the nominal volume", nominal.text(UnitSystem.SI), nominal.si());
    }

    private static void require(String name, String text, double si) {
        if (si < 0) {
            throw new OutOfRangeException(name, text, "zero or more", "give it without a sign");
        }
    }

    /** The error of one input, in coherent SI. */
    double of(ReadingInput input) {
        return switch (input) {
            case COLD_PRESSURE, HOT_PRESSURE -> pressure.si();
            case COLD_TEMPERATURE, HOT_TEMPERATURE -> temperature.si();
            case CHARGE -> charge.si();
            case NOMINAL_VOLUME -> nominal.si();
        };
    }
}
