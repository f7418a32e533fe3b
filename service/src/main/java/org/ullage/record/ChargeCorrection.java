package org.ullage.record;

import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;

/**
 * A gas charge at another temperature of its gas: with the water side empty the gas keeps its volume, so its absolute pressure
 * goes with its
 * absolute temperature, p_2 = (p_1 + p_a) T_2 / T_1 - p_a. Two readings can be compared only at one temperature.
 */
public final class ChargeCorrection {

    /** Where the formula comes from. */
    public static final Source SOURCE =
            Source.computed("ideal gas law at constant volume", "charge with the water side empty");

    /** The temperature at which charges are compared, 20 degC. */
    public static final Temperature REFERENCE = GasTemperatures.ISOTHERMAL.charged();

    private ChargeCorrection() {}

    /**
     * The charge at another temperature.
     *
     * @param charge gauge pressure as it was read
     * @param read temperature of the gas then
     * @param wanted temperature of the gas wanted
     * @param ambient pressure of the air at the site
     * @return the gauge pressure at that temperature
     * @throws OutOfRangeException if the charge is at or below vacuum
     */
    public static GaugePressure at(
            GaugePressure charge, Temperature read, Temperature wanted, AbsolutePressure ambient) {
        return absolute(charge, read, wanted, ambient).gauge(ambient);
    }

    static AbsolutePressure absolute(
            GaugePressure charge, Temperature read, Temperature wanted, AbsolutePressure ambient) {
        return GasLaw.chargeAt(charge.absolute(ambient), read, wanted);
    }
}
