package org.ullage.support;

import java.io.Serializable;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

/**
 * Where the hands are at one end of a lift. Immutable.
 *
 * @param reach horizontal distance H from the middle between the ankles to the hands, above zero
 * @param height height V of the hands above the floor, zero or more
 * @param turnDegrees angle A in degrees between the load and straight ahead, 0 to 180
 */
public record HandPosition(Length reach, Length height, double turnDegrees) implements Serializable {

    /** A half turn. */
    private static final double HALF_TURN = 180;

    /**
     * Checks the values.
     *
     * @param reach H
     * @param height V
     * @param turnDegrees A
     * @throws OutOfRangeException if the reach is not above zero, the height negative or the angle not from 0 to 180 degrees
     */
    public HandPosition {
        Inputs.requirePositive(
                "horizontal distance of the hands", reach, "measure it from the middle between the ankles");
        Inputs.requireNotNegative("height of the hands", height, "measure it from the floor one stands on");
        Inputs.requireWithin("turn in degrees", turnDegrees, 0, HALF_TURN, "give its size without a sign");
    }

    /**
     * Hands straight ahead.
     *
     * @param reach H, above zero
     * @param height V, zero or more
     * @return the position
     * @throws OutOfRangeException if the reach is not above zero or the height negative
     */
    public static HandPosition ahead(Length reach, Length height) {
        return new HandPosition(reach, height, 0);
    }

    /**
     * Horizontal multiplier HM.
     *
     * @return 25 cm / H, at most 1; 0 beyond 63 cm
     */
    public double horizontalMultiplier() {
        return Niosh.horizontal(reach);
    }

    /**
     * Vertical multiplier VM.
     *
     * @return 1 - 0.003 |V - 75| with V in cm; 0 above 175 cm
     */
    public double verticalMultiplier() {
        return Niosh.vertical(height);
    }

    /**
     * Asymmetry multiplier AM.
     *
     * @return 1 - 0.0032 A; 0 beyond 135 degrees
     */
    public double asymmetryMultiplier() {
        return Niosh.asymmetry(turnDegrees);
    }
}
