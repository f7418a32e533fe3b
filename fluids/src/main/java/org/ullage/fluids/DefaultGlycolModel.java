package org.ullage.fluids;

import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/** Which model is taken where none is named; argued at {@link Glycol#defaultModel(VolumeFraction)}. */
final class DefaultGlycolModel {

    /** The ASHRAE table begins here, percent by volume. */
    private static final double ASHRAE_FROM = 10;

    /** Where Melinder's expansion overtakes ASHRAE's (COMPUTED from both over seven spans in 4 to 93 degC), percent by volume. */
    private static final double ETHYLENE_MELINDER_FROM = 18;

    /** As {@link #ETHYLENE_MELINDER_FROM}. */
    private static final double PROPYLENE_MELINDER_FROM = 27;

    private DefaultGlycolModel() {}

    static GlycolModel at(Glycol glycol, VolumeFraction volume) {
        double percent = volume.in(Units.VOLUME_PERCENT);
        if (percent < ASHRAE_FROM) {
            return GlycolModel.IDEAL_MIXING;
        }
        return percent < melinderFrom(glycol) ? GlycolModel.ASHRAE : GlycolModel.MELINDER;
    }

    private static double melinderFrom(Glycol glycol) {
        return glycol == Glycol.ETHYLENE ? ETHYLENE_MELINDER_FROM : PROPYLENE_MELINDER_FROM;
    }
}
