package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.GasLaw;

/**
 * A gas charge as a gauge shows it with the water side empty: it means nothing without the temperature of the gas and the pressure of
 * the air around the gauge. Immutable.
 *
 * <p>The gas keeps its volume, so p_2 = (p_1 + p_a) T_2 / T_1 - p_a, T absolute. Dry air and dry nitrogen follow this alike; within 0.5 %
 * of the absolute pressure below 10 bar and from 0 to 100 degC.
 *
 * @param pressure gauge pressure of the gas, above vacuum
 * @param gas temperature of the gas
 * @param atmosphere pressure of the air around the gauge
 */
public record ChargeReading(GaugePressure pressure, Temperature gas, AbsolutePressure atmosphere)
        implements Serializable {

    /** Gay-Lussac's law of a gas that keeps its volume. */
    public static final Source SOURCE =
            Source.computed("ideal gas at constant volume", "p_2 / p_1 = T_2 / T_1, absolute");

    /**
     * Checks that there is gas.
     *
     * @param pressure gauge pressure of the gas
     * @param gas temperature of the gas
     * @param atmosphere pressure of the air around the gauge
     * @throws OutOfRangeException if the pressure is at or below vacuum
     */
    public ChargeReading {
        pressure.absolute(atmosphere);
    }

    /**
     * A charge that is known by its absolute pressure.
     *
     * @param pressure absolute pressure of the gas
     * @param gas temperature of the gas
     * @param atmosphere pressure of the air around the gauge
     * @return the reading
     */
    public static ChargeReading of(AbsolutePressure pressure, Temperature gas, AbsolutePressure atmosphere) {
        return new ChargeReading(pressure.gauge(atmosphere), gas, atmosphere);
    }

    /**
     * The charge counted from vacuum.
     *
     * @return p + p_a
     */
    public AbsolutePressure absolute() {
        return pressure.absolute(atmosphere);
    }

    /**
     * The same gas at another temperature.
     *
     * @param other temperature of the gas
     * @return what the gauge shows then
     */
    public ChargeReading at(Temperature other) {
        return of(GasLaw.chargeAt(absolute(), gas, other), other, atmosphere);
    }

    /**
     * The same gas under another air pressure, as when a vessel that was charged in a workshop is carried up.
     *
     * @param air pressure of the air, such as {@code StandardAtmosphere.at(altitude)}
     * @return what the gauge shows there
     */
    public ChargeReading under(AbsolutePressure air) {
        return of(absolute(), gas, air);
    }

    /**
     * The reading for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 12 psi with the gas at 68 degF}
     */
    public String text(UnitSystem system) {
        return pressure.text(system) + " with the gas at " + gas.text(system);
    }
}
