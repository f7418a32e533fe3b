package org.ullage.pressure;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;

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
 * @param place where the vessel stands; used where a pressure is derived, not where it is given
 */
public record PressureInputs(
        @Nullable GaugePressure coldPressure,
        @Nullable GaugePressure finalPressure,
        @Nullable Length staticHead,
        @Nullable GaugePressure reliefSetting,
        @Nullable GaugePressure preCharge,
        @Nullable AbsolutePressure atmosphere,
        VesselPlace place)
        implements Serializable {

    /** Nothing given yet. */
    public static final PressureInputs NONE =
            new PressureInputs(null, null, null, null, null, null, VesselPlace.AT_VALVE);

    /**
     * Adds the lowest pressure at the vessel.
     *
     * @param pressure gauge pressure at the vessel, cold
     * @return a copy with it
     */
    public PressureInputs withColdPressure(@Nullable GaugePressure pressure) {
        return new PressureInputs(pressure, finalPressure, staticHead, reliefSetting, preCharge, atmosphere, place);
    }

    /**
     * Adds the highest pressure at the vessel.
     *
     * @param pressure gauge pressure at the vessel, hot
     * @return a copy with it
     */
    public PressureInputs withFinalPressure(@Nullable GaugePressure pressure) {
        return new PressureInputs(coldPressure, pressure, staticHead, reliefSetting, preCharge, atmosphere, place);
    }

    /**
     * Adds the static head.
     *
     * @param height of the highest point above the vessel
     * @return a copy with it
     */
    public PressureInputs withStaticHead(@Nullable Length height) {
        return new PressureInputs(coldPressure, finalPressure, height, reliefSetting, preCharge, atmosphere, place);
    }

    /**
     * Adds the relief setting.
     *
     * @param setting gauge pressure at which the valve is set to open
     * @return a copy with it
     */
    public PressureInputs withReliefSetting(@Nullable GaugePressure setting) {
        return new PressureInputs(coldPressure, finalPressure, staticHead, setting, preCharge, atmosphere, place);
    }

    /**
     * Adds the gas charge.
     *
     * @param charge gauge pressure of the gas with the water side empty
     * @return a copy with it
     */
    public PressureInputs withPreCharge(@Nullable GaugePressure charge) {
        return new PressureInputs(coldPressure, finalPressure, staticHead, reliefSetting, charge, atmosphere, place);
    }

    /**
     * Adds the pressure of the air.
     *
     * @param air absolute pressure at the site
     * @return a copy with it
     */
    public PressureInputs withAtmosphere(@Nullable AbsolutePressure air) {
        return new PressureInputs(coldPressure, finalPressure, staticHead, reliefSetting, preCharge, air, place);
    }

    /**
     * Adds where the vessel stands.
     *
     * @param where heights and pump effects
     * @return a copy with it
     */
    public PressureInputs withPlace(VesselPlace where) {
        return new PressureInputs(coldPressure, finalPressure, staticHead, reliefSetting, preCharge, atmosphere, where);
    }
}
