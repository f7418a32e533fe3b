package org.ullage.fluids;

import org.ullage.provenance.Source;

/** Pure water's vapour pressure as the safe side for what is mixed with something less volatile. */
final class WaterVapour {

    static final Source SOURCE = GlycolSources.PURE_WATER_VAPOUR;

    private WaterVapour() {}

    /**
     * Region 4 begins at 0 degC. The vapour pressure rises with temperature, so its value there is an upper bound below.
     *
     * @param kelvins up to the critical point of water
     * @return pascals
     */
    static double pressure(double kelvins) {
        return Iapws97.saturationPressure(Math.max(kelvins, Iapws97.LOWEST_TEMPERATURE.value()));
    }

    /** Whether the vapour pressure is below a pressure or at it, without working it out where that is not needed. */
    static boolean isBelow(double kelvins, double pascals) {
        return Iapws97Region4.isLiquid(Math.max(kelvins, Iapws97.LOWEST_TEMPERATURE.value()), pascals);
    }
}
