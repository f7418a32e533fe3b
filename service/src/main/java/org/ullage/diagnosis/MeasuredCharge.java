package org.ullage.diagnosis;

import java.io.Serializable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;

/**
 * The charge as it was measured with the water side isolated and drained to zero pressure. With water pressure on, the gauge would show
 * that and not the charge. Immutable.
 *
 * @param pressure what the gauge showed
 * @param gas temperature of the gas, that of the shell
 * @param error greatest error of the gauge, above zero
 */
public record MeasuredCharge(GaugePressure pressure, Temperature gas, PressureDifference error)
        implements Serializable {

    /**
     * Checks that the error is above zero.
     *
     * @param pressure what the gauge showed
     * @param gas temperature of the gas
     * @param error greatest error of the gauge
     * @throws OutOfRangeException if the error is zero or negative
     */
    public MeasuredCharge {
        if (error.si() <= 0) {
            throw new OutOfRangeException(
                    "error of the gauge", error.textInBothSystems(), "above zero", "give class times span");
        }
    }
}
