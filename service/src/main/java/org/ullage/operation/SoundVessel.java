package org.ullage.operation;

import java.io.Serializable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/**
 * A vessel that is known to be in order: its membrane holds and its charge was checked. Several vessels of one charge count as one
 * of their nominal volumes together. Immutable.
 *
 * @param nominal nominal volume, above zero
 * @param charge gas charge with the water side empty
 * @param ambient pressure of the surrounding air
 */
public record SoundVessel(Volume nominal, GaugePressure charge, AbsolutePressure ambient) implements Serializable {

    /**
     * Checks the nominal volume.
     *
     * @param nominal nominal volume
     * @param charge gas charge
     * @param ambient pressure of the surrounding air
     * @throws OutOfRangeException if the nominal volume is zero or negative
     */
    public SoundVessel {
        GasLaw.requireNominal(nominal);
    }

    /** The charge counted from vacuum. */
    AbsolutePressure absoluteCharge() {
        return charge.absolute(ambient);
    }
}
