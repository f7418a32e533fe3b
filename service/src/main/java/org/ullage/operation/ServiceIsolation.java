package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * What the other vessels can do while one is shut off for service. Immutable.
 *
 * @param vessel name of the vessel shut off
 * @param rest the loop with the others
 * @param limit highest pressure allowed at the reference point meanwhile: the relief setting there less a margin
 * @param warmest highest loop temperature that keeps to the limit; null if every temperature does at which the fluid is liquid
 */
public record ServiceIsolation(
        String vessel,
        OperatingCurve rest,
        GaugePressure limit,
        @Nullable Temperature warmest) implements Serializable {

    /**
     * Shuts a vessel off.
     *
     * @param curve the loop with all vessels
     * @param vessel name of the vessel
     * @param when loop temperature at that moment
     * @param limit highest pressure allowed at the reference point
     * @return what the rest can do
     * @throws OutOfRangeException if there is no such vessel, it is the only one, or the pressure at that moment is above the limit
     */
    public static ServiceIsolation of(OperatingCurve curve, String vessel, Temperature when, GaugePressure limit) {
        OperatingCurve rest = curve.isolating(vessel, when);
        return new ServiceIsolation(vessel, rest, limit, new CurveLimits(rest).warmestBelow(limit));
    }

    /**
     * The loop at a temperature with the rest.
     *
     * @param hot such as the usual operating temperature
     * @return pressure, state, acceptance left
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public OperatingPoint at(Temperature hot) {
        return rest.at(hot);
    }

    /**
     * The answer in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        Temperature upTo = warmest;
        String limited = upTo == null
                ? "every temperature at which the fluid is liquid keeps below "
                : "run no warmer than " + upTo.text(system, 3) + " to keep below ";
        return "with " + vessel + " shut off " + limited + limit.text(system);
    }
}
