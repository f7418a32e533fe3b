package org.ullage.operation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;

/**
 * The pressures that are normal at each temperature, when contents, charge and fill are known within bounds: the lowest and the highest
 * of several curves. A change of pressure with temperature alone is no sign of failure; a reading outside the band asks for a reason.
 * Immutable.
 *
 * @param curves one for each case, 1 or more
 */
public record OperatingBand(List<OperatingCurve> curves) implements Serializable {

    /**
     * Copies the curves.
     *
     * @param curves one for each case
     * @throws OutOfRangeException if there is none
     */
    public OperatingBand {
        curves = List.copyOf(curves);
        if (curves.isEmpty()) {
            throw new OutOfRangeException("number of curves", "0", "1 or more", "give at least the curve itself");
        }
    }

    /**
     * A curve and all corners of its tolerances; the pressure moves one way with each of them, so the corners bound it.
     *
     * @param curve the curve as it is thought to be
     * @param tolerances how far it may be off
     * @return the band
     * @throws OutOfRangeException if a tolerance takes a pressure below vacuum
     */
    public static OperatingBand around(OperatingCurve curve, OperatingTolerances tolerances) {
        List<OperatingCurve> curves = new ArrayList<>(tolerances.corners(curve));
        curves.add(curve);
        return new OperatingBand(curves);
    }

    /**
     * The loop at a temperature in the case with the lowest pressure.
     *
     * @param temperature mean temperature of the fluid in the loop
     * @return the point; without a pressure if the vessels may be empty there
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public OperatingPoint lowest(Temperature temperature) {
        return curves.stream().min(byPressure(temperature)).orElseThrow().at(temperature);
    }

    /**
     * The loop at a temperature in the case with the highest pressure.
     *
     * @param temperature mean temperature of the fluid in the loop
     * @return the point; without a pressure if the vessels may be unable to take the water
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public OperatingPoint highest(Temperature temperature) {
        return curves.stream().max(byPressure(temperature)).orElseThrow().at(temperature);
    }

    private static Comparator<OperatingCurve> byPressure(Temperature temperature) {
        return Comparator.comparingDouble(curve -> curve.numbers().pressure(temperature.si()));
    }

    /**
     * Whether a reading is normal.
     *
     * @param reading pressure at the reference point and loop temperature
     * @return whether it lies in the band, its edges included
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public boolean contains(Reading reading) {
        GaugePressure low = lowest(reading.temperature()).pressure();
        OperatingPoint top = highest(reading.temperature());
        GaugePressure high = top.pressure();
        boolean belowTop = high == null
                ? top.state() == LoopState.LIQUID_FULL
                : reading.pressure().si() <= high.si();
        return belowTop && (low == null || reading.pressure().si() >= low.si());
    }

    /**
     * The normal swing between two temperatures in words.
     *
     * @param cold one end
     * @param hot the other end
     * @param system metric or inch-pound
     * @return a few lines, each ended by a line feed
     * @throws OutOfRangeException if the fluid's model does not answer there
     */
    public String text(Temperature cold, Temperature hot, UnitSystem system) {
        return "lowest   " + lowest(cold).text(system) + "; " + lowest(hot).text(system) + '\n'
                + "highest  " + highest(cold).text(system) + "; " + highest(hot).text(system) + '\n'
                + "A change of pressure with temperature alone is no sign of failure.\n";
    }
}
