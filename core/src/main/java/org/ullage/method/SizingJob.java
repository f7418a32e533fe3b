package org.ullage.method;

import java.io.Serializable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselType;

/**
 * What is to be sized, as far as it was given: the same job can be put to several methods. Immutable.
 *
 * @param loop contents, pipe and fluid
 * @param vessel kind of vessel wanted
 * @param temperatures the temperatures that were given
 * @param pressures the pressures that were given
 */
public record SizingJob(Loop loop, VesselType vessel, LoopTemperatures temperatures, PressureInputs pressures)
        implements Serializable {

    /**
     * The same job for another loop.
     *
     * @param other the loop
     * @return a copy
     */
    public SizingJob with(Loop other) {
        return new SizingJob(other, vessel, temperatures, pressures);
    }

    /**
     * The lowest temperature, for a method that cannot do without.
     *
     * @param neededBy the method's title
     * @return the temperature
     * @throws MissingInputException if it was not given
     */
    Temperature requireCold(String neededBy) {
        Temperature cold = temperatures.cold();
        if (cold == null) {
            throw new MissingInputException("lowest (fill) temperature", neededBy, "give the cold temperature");
        }
        return cold;
    }

    /**
     * The highest temperature in the sense of a method.
     *
     * @param basis which temperature the method means
     * @param neededBy the method's title
     * @return the temperature
     * @throws MissingInputException if it was not given
     */
    Temperature requireHot(HotBasis basis, String neededBy) {
        Temperature hot = basis.of(temperatures);
        if (hot == null) {
            throw new MissingInputException("highest temperature", neededBy, "give the hot temperature");
        }
        return hot;
    }
}
