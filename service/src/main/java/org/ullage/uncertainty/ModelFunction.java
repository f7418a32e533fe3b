package org.ullage.uncertainty;

import org.ullage.quantity.OutOfRangeException;

/** The quantity that is wanted, as a function of the inputs: what the Guide calls the measurement function. */
@FunctionalInterface
public interface ModelFunction {

    /**
     * The wanted value for one set of inputs.
     *
     * @param inputs in the order of the list of {@link ModelInput}, each in the coherent SI unit of its quantity; not to be kept or
     *     changed
     * @return in the coherent SI unit of the result; NaN where there is no answer
     * @throws OutOfRangeException if there is no answer; its quantity names the reason
     */
    double value(double[] inputs);
}
