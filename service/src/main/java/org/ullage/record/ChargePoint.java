package org.ullage.record;

import java.io.Serializable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * One charge in the history of a vessel. Immutable.
 *
 * @param date the day
 * @param read gauge pressure as it was read with the water side at zero
 * @param gasTemperature temperature of the gas then
 * @param corrected absolute pressure at {@link ChargeCorrection#REFERENCE}
 * @param asLeft whether it is a charge as it was set or left, after which a new stretch begins; otherwise one as it was found
 * @param stretch which stretch between two settings it belongs to, from 0
 */
public record ChargePoint(
        RecordDate date,
        GaugePressure read,
        Temperature gasTemperature,
        AbsolutePressure corrected,
        boolean asLeft,
        int stretch)
        implements Serializable {

    /**
     * The point for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 2026-11-25: 1.2 bar at 15 degC as left}
     */
    public String text(UnitSystem system) {
        return date + ": " + read.text(system) + " at " + gasTemperature.text(system)
                + (asLeft ? " as left" : " as found");
    }
}
