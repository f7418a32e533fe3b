package org.ullage.pressure;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The pressure of a standing water column: p_st = rho_w g_n h, with the conventional metre of water (1000 kg/m3), which is on
 * the high, safe side for warm water.
 */
public final class StaticHead {

    private static final Source HYDROSTATIC =
            Source.computed("hydrostatic law", "conventional water of 1000 kg/m3 under standard gravity");

    private StaticHead() {}

    /**
     * The pressure of a column on bare SI numbers.
     *
     * @param metres height of the column
     * @return pascals
     */
    static double pascals(double metres) {
        return Units.CONVENTIONAL_WATER_DENSITY.value() * Units.STANDARD_GRAVITY.value() * metres;
    }

    /**
     * The pressure of a water column.
     *
     * @param height of the highest point above the vessel; negative if the vessel is above
     * @return the pressure difference between foot and top
     */
    public static PressureDifference of(Length height) {
        return PressureDifference.ofSi(pascals(height.si()));
    }

    static Step step(Length height) {
        return new Step(
                "static head of the loop above the vessel",
                "rho_w * g_n * h",
                List.of(
                        Term.of(Units.CONVENTIONAL_WATER_DENSITY),
                        Term.of(Units.STANDARD_GRAVITY),
                        Term.of("h", height)),
                Term.of("p_st", of(height)),
                HYDROSTATIC);
    }
}
