package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.quantity.Density;
import org.ullage.quantity.Temperature;

/** A user's own rule for the density of a liquid. It has to be free of state, so that many threads may call it. */
@FunctionalInterface
public interface DensityFunction extends Serializable {

    /**
     * The density at a temperature.
     *
     * @param temperature within the range stated for the fluid
     * @return the density of the liquid
     */
    Density at(Temperature temperature);
}
