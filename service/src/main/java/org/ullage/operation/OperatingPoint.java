package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * The loop at one temperature. Immutable.
 *
 * @param temperature mean temperature of the fluid in the loop
 * @param pressure at the reference point; null where no number can be given: vessels empty, boiling, or full of a liquid whose
 *     compression is not known or does not give room enough below 100 bar
 * @param state what sets the pressure
 * @param water water in the vessels
 * @param acceptanceLeft water the vessels could still take at any pressure
 */
public record OperatingPoint(
        Temperature temperature, @Nullable GaugePressure pressure, LoopState state, Volume water, Volume acceptanceLeft)
        implements Serializable {

    private static final int DIGITS = 3;

    /**
     * The point in words.
     *
     * @param system metric or inch-pound
     * @return such as {@code 60 degC: 1.7 bar, 3.08 L in the vessels}
     */
    public String text(UnitSystem system) {
        String place = temperature.text(system) + ": ";
        GaugePressure known = pressure;
        if (known == null) {
            return place + "no pressure to give; " + state;
        }
        String number = place + known.text(system, DIGITS) + ", " + water.text(system, DIGITS) + " in the vessels";
        return state == LoopState.CUSHIONED ? number : number + "; " + state;
    }
}
