package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;

/** A user's own rule for the vapour pressure of a liquid. It has to be free of state, so that many threads may call it. */
@FunctionalInterface
public interface VapourPressureFunction extends Serializable {

    /**
     * The pressure at which the liquid begins to boil.
     *
     * @param temperature within the range stated for the fluid
     * @return absolute pressure
     */
    AbsolutePressure at(Temperature temperature);
}
