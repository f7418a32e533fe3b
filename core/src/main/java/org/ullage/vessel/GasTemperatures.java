package org.ullage.vessel;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * The temperatures of the gas cushion: when it was charged, with the loop cold and with the loop hot. A charge rises with its absolute
 * temperature, p_0(T) = p_0 T / T_charge. Immutable.
 *
 * @param charged gas temperature at which the charge was set
 * @param cold gas temperature with the loop cold
 * @param hot gas temperature with the loop hot
 * @param source where the temperatures come from
 */
public record GasTemperatures(Temperature charged, Temperature cold, Temperature hot, Source source)
        implements Serializable {

    /** The same temperature throughout, as every published rule has it. */
    public static final GasTemperatures ISOTHERMAL =
            at(20, Source.commonPractice("gas at room temperature throughout, 20 degC"));

    private static GasTemperatures at(double celsius, Source source) {
        Temperature room = Temperature.celsius(celsius);
        return new GasTemperatures(room, room, room, source);
    }

    /**
     * What the charge is multiplied by with the gas at a temperature.
     *
     * @param gas temperature of the gas
     * @return ratio of absolute temperatures
     * @throws OutOfRangeException if the ratio would be too large for a double
     */
    public double ratio(Temperature gas) {
        double ratio = gas.si() / charged.si();
        if (ratio > Double.MAX_VALUE) {
            throw new OutOfRangeException(
                    "temperature of the gas at charging",
                    charged.textInBothSystems(),
                    "high enough for a finite ratio to " + gas.textInBothSystems(),
                    "check both temperatures and their units");
        }
        return ratio;
    }

    /**
     * What the charge is multiplied by with the loop cold.
     *
     * @return ratio of absolute temperatures
     * @throws OutOfRangeException if the ratio would be too large for a double
     */
    public double coldRatio() {
        return ratio(cold);
    }

    /**
     * What the charge is multiplied by with the loop hot.
     *
     * @return ratio of absolute temperatures
     * @throws OutOfRangeException if the ratio would be too large for a double
     */
    public double hotRatio() {
        return ratio(hot);
    }

    /**
     * Whether the gas keeps the temperature at which it was charged.
     *
     * @return true if both ratios are one
     */
    public boolean isIsothermal() {
        return charged.equals(cold) && charged.equals(hot);
    }
}
