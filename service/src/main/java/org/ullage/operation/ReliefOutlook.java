package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.AfterLift;
import org.ullage.pressure.ReliefValve;
import org.ullage.pressure.StaticHead;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * How far a loop in use is from lifting its relief valve, and what a lift would leave behind. Immutable.
 *
 * @param curve the loop in use
 * @param valve its relief valve
 * @param valveAbove height of the valve above the point where the pressure is read, negative if below
 */
public record ReliefOutlook(OperatingCurve curve, ReliefValve valve, Length valveAbove) implements Serializable {

    /**
     * A pressure at the valve as the reference point sees it.
     *
     * @param atValve pressure at the valve
     * @return the same with the water column between them
     */
    public GaugePressure atReference(GaugePressure atValve) {
        return atValve.plus(StaticHead.of(valveAbove));
    }

    /**
     * Loop temperature up to which the valve stays shut even if it opens as early as its tolerance allows.
     *
     * @return the temperature, or null if it is not reached as long as the fluid is liquid
     * @throws OutOfRangeException if the fill pressure is above that already
     */
    public @Nullable Temperature shutUpTo() {
        return new CurveLimits(curve).warmestBelow(atReference(valve.mayOpenFrom()));
    }

    /**
     * Loop temperature at which the pressure reaches the valve's setting.
     *
     * @return the temperature, or null if it is not reached as long as the fluid is liquid
     * @throws OutOfRangeException if the fill pressure is above the setting already
     */
    public @Nullable Temperature liftsAt() {
        return new CurveLimits(curve).warmestBelow(atReference(valve.setting()));
    }

    /**
     * Pressure that is left at a temperature before the valve may begin to open.
     *
     * @param temperature where the loop has a pressure
     * @return negative if it may be open already
     * @throws OutOfRangeException if no pressure can be given there
     */
    public PressureDifference margin(Temperature temperature) {
        return atReference(valve.mayOpenFrom()).minus(curve.pressure(temperature));
    }

    /**
     * Water that the vessels can still take at a temperature before the valve may begin to open.
     *
     * @param temperature where the loop has a pressure
     * @return zero if it may be open already
     * @throws OutOfRangeException if no pressure can be given there
     */
    public Volume acceptanceLeft(Temperature temperature) {
        BankNumbers bank = curve.numbers().bank();
        double last = bank.water(pascals(atReference(valve.mayOpenFrom())));
        return Volume.ofSi(Math.max(0, last - bank.water(curve.pressureSi(temperature.si()))));
    }

    /**
     * The loop after the valve has lifted at a temperature and closed at a pressure.
     *
     * @param hot loop temperature when it closes
     * @param closing pressure at the valve when it closes: between {@link ReliefValve#closesAtLeast()} and {@link
     *     ReliefValve#closesAtMost()}
     * @return the curve with what is left; the same curve if the pressure was not above that
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public OperatingCurve afterLifting(Temperature hot, GaugePressure closing) {
        GaugePressure pressure = atReference(closing);
        if (lostMass(hot, pressure) <= 0) {
            return curve;
        }
        return curve.inUse()
                .leftAt(curve.inUse().bank(), new Reading(pressure, hot))
                .curve();
    }

    /**
     * What a lift leaves behind in the cold loop. Hot water that is lost counts by its mass, so the cold pressure is a little above
     * that of {@link AfterLift#of}, which takes hot litres from cold ones.
     *
     * @param hot loop temperature when the valve closes
     * @param closing pressure at the valve when it closes
     * @param cold loop temperature afterwards
     * @return water lost as warm as the loop was, and the cold pressure at the reference point
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public AfterLift afterLift(Temperature hot, GaugePressure closing, Temperature cold) {
        GaugePressure pressure = atReference(closing);
        double hotVolume = curve.inUse().loop().fluid().specificVolumeSi(hot.si(), pascals(pressure));
        Volume lost = Volume.ofSi(Math.max(0, lostMass(hot, pressure)) * hotVolume);
        OperatingNumbers after = afterLifting(hot, closing).numbers();
        double coldPascals = after.pressure(cold.si());
        return OperatingNumbers.isPressure(coldPascals)
                ? new AfterLift(lost, AbsolutePressure.ofSi(coldPascals), Volume.litres(0))
                : new AfterLift(lost, null, Volume.ofSi(after.missing(cold.si())));
    }

    private double lostMass(Temperature hot, GaugePressure pressure) {
        LoopBalance loop = curve.numbers().loop();
        double pascals = pascals(pressure);
        return loop.mass
                - loop.massWith(hot.si(), pascals, curve.numbers().bank().water(pascals));
    }

    private double pascals(GaugePressure atReference) {
        return curve.inUse().bank().absolute(atReference);
    }

    /**
     * The outlook in words.
     *
     * @param system metric or inch-pound
     * @return one line
     * @throws OutOfRangeException if the fill pressure is above the valve's setting
     */
    public String text(UnitSystem system) {
        Temperature shut = shutUpTo();
        Temperature lifts = liftsAt();
        return "relief valve set to " + valve.setting().text(system) + ": "
                + (shut == null
                        ? "stays shut as long as the fluid is liquid"
                        : "stays shut up to " + shut.text(system, 3))
                + (lifts == null ? "" : ", at its setting at " + lifts.text(system, 3));
    }
}
