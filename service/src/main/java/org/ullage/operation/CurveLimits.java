package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * The temperatures at which a curve passes a limit: found at the limit's pressure, without working out the curve in between. Immutable.
 *
 * @param curve the loop in use
 */
public record CurveLimits(OperatingCurve curve) implements Serializable {

    /** Temperatures looked at on the way to a crossing. */
    private static final int POINTS = 200;

    /**
     * The highest loop temperature up to which the pressure stays at or below a limit as the loop warms up from its known state.
     *
     * @param limit at the reference point, at or above the pressure that is known
     * @return the temperature, or null if the limit is not reached before the fluid boils at it or its model ends
     * @throws OutOfRangeException if the limit is below the pressure that is known
     */
    public @Nullable Temperature warmestBelow(GaugePressure limit) {
        LoopBalance loop = curve.numbers().loop();
        double pascals = curve.inUse().bank().absolute(limit);
        double given = curve.numbers().bank().water(pascals);
        double from = start();
        if (!curve.numbers().isRounding(loop.demand(from, pascals) - given)) {
            throw new OutOfRangeException(
                    "pressure limit",
                    limit.textInBothSystems(),
                    "at or above the pressure that is known",
                    "a limit that is passed already needs no warming");
        }
        double to = LiquidRange.upTo(loop.fluid, pascals, from);
        return temperature(BracketedRoot.first(kelvins -> loop.demand(kelvins, pascals) - given, from, to, POINTS));
    }

    /**
     * The temperature below which the vessels are empty of water as the loop cools down from its known state, so that its pressure falls away.
     *
     * @return the temperature, that of the known state if the vessels are empty from the start; null if they keep water down to where the fluid's
     *     model ends, or have no gas
     */
    public @Nullable Temperature emptyBelow() {
        LoopBalance loop = curve.numbers().loop();
        BankNumbers bank = curve.numbers().bank();
        double floor = bank.floor();
        if (floor <= 0) {
            return null;
        }
        double least = bank.water(floor);
        double coldest = loop.fluid.lowest().si();
        double from = Math.min(start(), LiquidRange.upTo(loop.fluid, floor, coldest));
        if (loop.demand(from, floor) < least) {
            return Temperature.ofSi(from);
        }
        return temperature(BracketedRoot.first(kelvins -> least - loop.demand(kelvins, floor), from, coldest, POINTS));
    }

    private double start() {
        return curve.inUse().known().temperature().si();
    }

    private static @Nullable Temperature temperature(double kelvins) {
        return Double.isNaN(kelvins) ? null : Temperature.ofSi(kelvins);
    }
}
