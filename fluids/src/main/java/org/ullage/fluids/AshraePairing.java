package org.ullage.fluids;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/**
 * ASHRAE's percent by volume against percent by mass, with the freezing point: straight lines between the printed rows,
 * because a smoother curve would follow the rounding to 0.1. Immutable.
 */
final class AshraePairing {

    private final double mostMass;
    private final UnivariateFunction massByVolume;
    private final UnivariateFunction volumeByMass;
    private final UnivariateFunction freezingByMass;

    AshraePairing(NumberTable table) {
        double[] volume = table.numbers("vol_pct");
        double[] mass = table.numbers("mass_pct");
        LinearInterpolator lines = new LinearInterpolator();
        massByVolume = lines.interpolate(volume, mass);
        volumeByMass = lines.interpolate(mass, volume);
        freezingByMass = lines.interpolate(mass, table.numbers("t_freeze_degC"));
        mostMass = mass[mass.length - 1];
    }

    /** The table begins at 0 % and ends here, percent by mass. */
    double mostMass() {
        return mostMass;
    }

    double mass(double volumePercent) {
        return massByVolume.value(volumePercent);
    }

    double volume(double massPercent) {
        return volumeByMass.value(massPercent);
    }

    /** In degC. */
    double freezing(double massPercent) {
        return freezingByMass.value(massPercent);
    }
}
