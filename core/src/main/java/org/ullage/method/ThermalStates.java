package org.ullage.method;

import java.io.Serializable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;

/**
 * The two ends between which a loop expands, on bare SI numbers: what the calculation passes around without conversions.
 *
 * @param coldKelvins lowest temperature; the highest one again if the lowest was not given
 * @param hotKelvins highest temperature
 * @param coldPascals absolute pressure at the vessel when cold
 * @param hotPascals absolute pressure at the vessel when hot
 * @param coldGiven whether the lowest temperature was given
 * @param hotGiven whether the highest temperature was given; if not, a rule that needs none gets one at which every model answers
 * @param pipeAlpha linear expansion coefficient of the pipe in 1/K, 0 if not known
 */
public record ThermalStates(
        double coldKelvins,
        double hotKelvins,
        double coldPascals,
        double hotPascals,
        boolean coldGiven,
        boolean hotGiven,
        double pipeAlpha)
        implements Serializable {

    /** The same temperatures at other absolute pressures. */
    ThermalStates at(double cold, double hot) {
        return new ThermalStates(coldKelvins, hotKelvins, cold, hot, coldGiven, hotGiven, pipeAlpha);
    }

    /** Temperature rise in kelvins. */
    double rise() {
        return hotKelvins - coldKelvins;
    }

    /**
     * Lowest temperature.
     *
     * @return the temperature
     */
    public Temperature cold() {
        return Temperature.ofSi(coldKelvins);
    }

    /**
     * Highest temperature.
     *
     * @return the temperature
     */
    public Temperature hot() {
        return Temperature.ofSi(hotKelvins);
    }

    /**
     * Pressure when cold.
     *
     * @return the absolute pressure
     */
    public AbsolutePressure coldPressure() {
        return AbsolutePressure.ofSi(coldPascals);
    }

    /**
     * Pressure when hot.
     *
     * @return the absolute pressure
     */
    public AbsolutePressure hotPressure() {
        return AbsolutePressure.ofSi(hotPascals);
    }
}
