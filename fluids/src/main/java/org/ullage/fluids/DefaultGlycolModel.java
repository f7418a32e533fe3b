package org.ullage.fluids;

import org.ullage.provenance.Constant;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/** Which model is taken where none is named; argued at {@link Glycol#defaultModel(VolumeFraction)}. */
final class DefaultGlycolModel {

    /** The ASHRAE table begins here, percent by volume. */
    private static final double ASHRAE_FROM = new Constant("phi", 10, "vol%", GlycolSources.ASHRAE_DENSITY).value();

    /** Where Melinder's expansion overtakes ASHRAE's, percent by volume. */
    private static final double ETHYLENE_MELINDER_FROM =
            new Constant("phi", 18, "vol%", GlycolSources.DEFAULT_MODEL).value();

    /** As {@link #ETHYLENE_MELINDER_FROM}. */
    private static final double PROPYLENE_MELINDER_FROM =
            new Constant("phi", 27, "vol%", GlycolSources.DEFAULT_MODEL).value();

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
