package org.ullage.method;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselType;

/**
 * What is to be sized, as far as it was given: the same job can be put to several methods. Immutable.
 *
 * @param loop contents, pipe and fluid
 * @param vessel kind of vessel wanted
 * @param cold lowest (or fill) temperature, or null if not given
 * @param hot highest temperature in the sense of the method, or null if not given
 * @param pressures the pressures that were given
 */
public record SizingJob(
        Loop loop,
        VesselType vessel,
        @Nullable Temperature cold,
        @Nullable Temperature hot,
        PressureInputs pressures) implements Serializable {

    /**
     * Checks the order of the temperatures.
     *
     * @param loop contents, pipe and fluid
     * @param vessel kind of vessel wanted
     * @param cold lowest temperature, or null
     * @param hot highest temperature, or null
     * @param pressures the pressures that were given
     * @throws OutOfRangeException if the highest temperature is not above the lowest
     */
    public SizingJob {
        if (cold != null && hot != null && hot.si() <= cold.si()) {
            throw new OutOfRangeException(
                    "highest temperature",
                    hot.text(Units.CELSIUS) + " (" + hot.text(Units.FAHRENHEIT) + ")",
                    "above the lowest temperature " + cold.text(Units.CELSIUS) + " (" + cold.text(Units.FAHRENHEIT)
                            + ")",
                    "check that the two were not swapped and that their units are right");
        }
    }

    /**
     * The lowest temperature, for a method that cannot do without.
     *
     * @param neededBy the method's title
     * @return the temperature
     * @throws MissingInputException if it was not given
     */
    Temperature requireCold(String neededBy) {
        if (cold == null) {
            throw new MissingInputException("lowest (fill) temperature", neededBy, "give the cold temperature");
        }
        return cold;
    }

    /**
     * The highest temperature, for a method that cannot do without.
     *
     * @param neededBy the method's title
     * @return the temperature
     * @throws MissingInputException if it was not given
     */
    Temperature requireHot(String neededBy) {
        if (hot == null) {
            throw new MissingInputException("highest temperature", neededBy, "give the hot temperature");
        }
        return hot;
    }
}
