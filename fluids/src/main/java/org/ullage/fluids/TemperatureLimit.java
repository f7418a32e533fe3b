package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/**
 * A published upper temperature for a heat-transfer fluid. Immutable.
 *
 * @param meaning what happens above, or what the limit is for
 * @param temperature bulk temperature of the fluid
 * @param source where it comes from
 */
public record TemperatureLimit(String meaning, Temperature temperature, Source source) implements Serializable {

    /** 250 degF is 121 degC; whole degrees are all the sources give. */
    private static final int DIGITS = 3;

    /**
     * The limit in one line.
     *
     * @return temperature, meaning and source
     */
    @Override
    public String toString() {
        return temperature.text(Units.CELSIUS, DIGITS) + ": " + meaning + " " + source;
    }
}
