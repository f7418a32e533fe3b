package org.ullage.pressure;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;

/**
 * The pressures of a job as far as they were given. A pressure at the vessel that is given is taken as it is; otherwise the
 * method derives it from static head or relief setting with its own margins. Immutable; null means not given.
 *
 * @param coldPressure lowest pressure at the vessel
 * @param finalPressure highest pressure at the vessel
 * @param staticHead height of the highest point of the loop above the vessel
 * @param reliefSetting setting of the relief valve
 * @param preCharge gas charge with the water side empty
 * @param atmosphere pressure of the air at the site
 * @param reliefMargin margin below the relief setting that the valve's instructions ask for; it takes the place of the method's rule
 * @param place where the vessel stands; used where a pressure is derived, not where it is given
 */
public record PressureInputs(
        @Nullable GaugePressure coldPressure,
        @Nullable GaugePressure finalPressure,
        @Nullable Length staticHead,
        @Nullable GaugePressure reliefSetting,
        @Nullable GaugePressure preCharge,
        @Nullable AbsolutePressure atmosphere,
        @Nullable PressureDifference reliefMargin,
        VesselPlace place)
        implements Serializable {

    /** Nothing given yet. */
    public static final PressureInputs NONE =
            new PressureInputs(null, null, null, null, null, null, null, VesselPlace.AT_VALVE);

    /**
     * Adds the lowest pressure at the vessel.
     *
     * @param pressure gauge pressure at the vessel, cold
     * @return a copy with it
     */
    public PressureInputs withColdPressure(@Nullable GaugePressure pressure) {
        return new PressureInputs(
                pressure, finalPressure, staticHead, reliefSetting, preCharge, atmosphere, reliefMargin, place);
    }

    /**
     * Adds the highest pressure at the vessel.
     *
     * @param pressure gauge pressure at the vessel, hot
     * @return a copy with it
     */
    public PressureInputs withFinalPressure(@Nullable GaugePressure pressure) {
        return new PressureInputs(
                coldPressure, pressure, staticHead, reliefSetting, preCharge, atmosphere, reliefMargin, place);
    }

    /**
     * Adds the static head.
     *
     * @param height of the highest point above the vessel
     * @return a copy with it
     */
    public PressureInputs withStaticHead(@Nullable Length height) {
        return new PressureInputs(
                coldPressure, finalPressure, height, reliefSetting, preCharge, atmosphere, reliefMargin, place);
    }

    /**
     * Adds the relief setting.
     *
     * @param setting gauge pressure at which the valve is set to open
     * @return a copy with it
     */
    public PressureInputs withReliefSetting(@Nullable GaugePressure setting) {
        return new PressureInputs(
                coldPressure, finalPressure, staticHead, setting, preCharge, atmosphere, reliefMargin, place);
    }

    /**
     * Adds the gas charge.
     *
     * @param charge gauge pressure of the gas with the water side empty
     * @return a copy with it
     */
    public PressureInputs withPreCharge(@Nullable GaugePressure charge) {
        return new PressureInputs(
                coldPressure, finalPressure, staticHead, reliefSetting, charge, atmosphere, reliefMargin, place);
    }

    /**
     * Adds the pressure of the air.
     *
     * @param air absolute pressure at the site
     * @return a copy with it
     */
    public PressureInputs withAtmosphere(@Nullable AbsolutePressure air) {
        return new PressureInputs(
                coldPressure, finalPressure, staticHead, reliefSetting, preCharge, air, reliefMargin, place);
    }

    /**
     * Adds the margin that the valve's instructions ask for.
     *
     * @param margin below the relief setting
     * @return a copy with it
     */
    public PressureInputs withReliefMargin(@Nullable PressureDifference margin) {
        return new PressureInputs(
                coldPressure, finalPressure, staticHead, reliefSetting, preCharge, atmosphere, margin, place);
    }

    /**
     * The rule for the final pressure: the valve's own margin where it was given, else the method's.
     *
     * @param ofMethod the method's rule
     * @return the rule that counts
     */
    public FinalPressureRule finalRule(FinalPressureRule ofMethod) {
        return reliefMargin == null ? ofMethod : FinalPressureRule.below(reliefMargin, Source.given());
    }

    /**
     * Adds where the vessel stands.
     *
     * @param where heights and pump effects
     * @return a copy with it
     */
    public PressureInputs withPlace(VesselPlace where) {
        return new PressureInputs(
                coldPressure, finalPressure, staticHead, reliefSetting, preCharge, atmosphere, reliefMargin, where);
    }
}
