package org.ullage.charge;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;

/**
 * What is known on the day a vessel is charged and its loop is filled. Immutable; null means not given.
 *
 * <pre>{@code
 * ChargePlan plan = ChargeJob.of(sizing, Volume.litres(80), Temperature.celsius(8), Temperature.celsius(12))
 *         .found(GaugePressure.bar(1.5), Temperature.celsius(8))
 *         .gaugeAbove(Length.metres(2))
 *         .plan();
 * }</pre>
 *
 * @param sizing of a closed vessel; its charge, pressures, reserve and air pressure count
 * @param nominal nominal volume of the vessel that was chosen, above zero
 * @param air temperature of the air, and so of the gas, on the day
 * @param water temperature of the loop when it is filled, within the loop's range
 * @param chargedUnder pressure of the air where the charge is set; the sizing's if not given
 * @param gaugeAbove height of the loop's gauge above the vessel, negative if below
 * @param fill fill pressure at the vessel that was chosen; if not given, the lowest that keeps reserve and cold pressure
 * @param found the charge that was found in the vessel
 * @param tolerance how far off the charge may be
 */
public record ChargeJob(
        Sizing sizing,
        Volume nominal,
        Temperature air,
        Temperature water,
        @Nullable AbsolutePressure chargedUnder,
        Length gaugeAbove,
        @Nullable GaugePressure fill,
        @Nullable ChargeReading found,
        GaugeTolerance tolerance)
        implements Serializable {

    /**
     * Checks kind and volume.
     *
     * @param sizing of a closed vessel
     * @param nominal nominal volume
     * @param air temperature of the air
     * @param water temperature of the loop when it is filled
     * @param chargedUnder pressure of the air where the charge is set, or null
     * @param gaugeAbove height of the loop's gauge above the vessel
     * @param fill fill pressure at the vessel, or null
     * @param found the charge that was found, or null
     * @param tolerance how far off the charge may be
     * @throws OutOfRangeException if the vessel is an open tank or its volume not above zero
     */
    public ChargeJob {
        if (sizing.job().vessel().kind() == VesselKind.OPEN) {
            throw new OutOfRangeException(
                    "kind of vessel",
                    VesselKind.OPEN.word(),
                    "one with a gas charge",
                    "an open tank has no charge to set");
        }
        GasLaw.requireNominal(nominal);
    }

    /**
     * A vessel, its gauge at its own level, charged where it stands.
     *
     * @param sizing of a closed vessel
     * @param nominal nominal volume of the vessel that was chosen
     * @param air temperature of the air on the day
     * @param water temperature of the loop when it is filled
     * @return the job
     * @throws OutOfRangeException if the vessel is an open tank or its volume not above zero
     */
    public static ChargeJob of(Sizing sizing, Volume nominal, Temperature air, Temperature water) {
        return new ChargeJob(sizing, nominal, air, water, null, Length.metres(0), null, null, GaugeTolerance.USUAL);
    }

    /**
     * The same with the charge set elsewhere, as in a workshop at another altitude.
     *
     * @param pressure of the air there, such as {@code StandardAtmosphere.at(altitude)}
     * @return a copy
     */
    public ChargeJob chargedUnder(AbsolutePressure pressure) {
        return new ChargeJob(sizing, nominal, air, water, pressure, gaugeAbove, fill, found, tolerance);
    }

    /**
     * The same with the loop's gauge at another level.
     *
     * @param height of the gauge above the vessel, negative if below
     * @return a copy
     */
    public ChargeJob gaugeAbove(Length height) {
        return new ChargeJob(sizing, nominal, air, water, chargedUnder, height, fill, found, tolerance);
    }

    /**
     * The same with a fill pressure that was chosen.
     *
     * @param pressure at the vessel
     * @return a copy
     */
    public ChargeJob filledTo(GaugePressure pressure) {
        return new ChargeJob(sizing, nominal, air, water, chargedUnder, gaugeAbove, pressure, found, tolerance);
    }

    /**
     * The same with the charge that was found, read under the air pressure of the sizing.
     *
     * @param pressure on the gauge, water side empty
     * @param gas temperature of the gas
     * @return a copy
     * @throws OutOfRangeException if the pressure is at or below vacuum
     */
    public ChargeJob found(GaugePressure pressure, Temperature gas) {
        return found(new ChargeReading(pressure, gas, sizing.atmosphere()));
    }

    /**
     * The same with the charge that was found.
     *
     * @param reading water side empty, with the gas temperature and the air pressure it was read under
     * @return a copy
     */
    public ChargeJob found(ChargeReading reading) {
        return new ChargeJob(sizing, nominal, air, water, chargedUnder, gaugeAbove, fill, reading, tolerance);
    }

    /**
     * The same with the caller's own tolerance of the charge.
     *
     * @param limit how far off the charge may be before it is set again
     * @return a copy
     * @throws OutOfRangeException if the limit is not above zero
     */
    public ChargeJob within(PressureDifference limit) {
        return new ChargeJob(
                sizing, nominal, air, water, chargedUnder, gaugeAbove, fill, found, GaugeTolerance.of(limit));
    }

    /**
     * Works the plan out.
     *
     * @return the plan
     * @throws MissingInputException if the loop's coldest temperature, or for a loop that does not boil the hottest, is not known
     * @throws OutOfRangeException if the water is outside the loop's range, or the vessel cannot hold the water at any pressure
     */
    public ChargePlan plan() {
        return new ChargePlan(new ChargeNumbers(this));
    }

    AbsolutePressure chargingAir() {
        return chargedUnder == null ? sizing.atmosphere() : chargedUnder;
    }
}
