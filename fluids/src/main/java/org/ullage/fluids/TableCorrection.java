package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;

/**
 * A cell of a published density table that is not used as it was found. {@link GlycolModel#ASHRAE_AS_PRINTED} leaves it in.
 * Immutable.
 *
 * @param glycol whose table
 * @param temperature row
 * @param concentration column
 * @param asFound density in the source
 * @param asUsed density used instead
 * @param reason why
 * @param source where the density used comes from
 */
public record TableCorrection(
        Glycol glycol,
        Temperature temperature,
        VolumeFraction concentration,
        Density asFound,
        Density asUsed,
        String reason,
        Source source)
        implements Serializable {

    /** Digits that show both densities in full. */
    private static final int DIGITS = 6;

    /**
     * The correction in one line.
     *
     * @return such as {@code ethylene glycol 10 vol% at 30 degC: 1009.92 kg/m3 used for 1009.62 kg/m3, because ...}
     */
    @Override
    public String toString() {
        return glycol.text() + " " + concentration.text(Units.VOLUME_PERCENT) + " at "
                + temperature.text(Units.CELSIUS) + ": " + asUsed.text(Units.KILOGRAM_PER_CUBIC_METRE, DIGITS)
                + " used for " + asFound.text(Units.KILOGRAM_PER_CUBIC_METRE, DIGITS) + ", because " + reason + " "
                + source;
    }
}
