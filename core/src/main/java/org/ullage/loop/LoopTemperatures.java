package org.ullage.loop;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * The temperatures of a loop as far as they are known: published rules do not mean the same one when they say hot. Immutable; null
 * means not given.
 *
 * @param cold lowest (or fill) temperature
 * @param hot highest operating temperature; for chilled water the one it warms up to when the plant is off
 * @param mean mean of flow and return at full output
 * @param safety temperature at which the safety device acts, tolerance included
 */
public record LoopTemperatures(
        @Nullable Temperature cold,
        @Nullable Temperature hot,
        @Nullable Temperature mean,
        @Nullable Temperature safety) implements Serializable {

    /**
     * Checks the order.
     *
     * @param cold lowest temperature, or null
     * @param hot highest operating temperature, or null
     * @param mean mean of flow and return, or null
     * @param safety temperature at which the safety device acts, or null
     * @throws OutOfRangeException if two of them are out of order
     */
    public LoopTemperatures {
        requireAbove("highest temperature", hot, "the lowest temperature", cold);
        requireAbove("mean temperature", mean, "the lowest temperature", cold);
        requireAbove("safety temperature", safety, "the lowest temperature", cold);
        if (mean != null && hot != null && mean.si() > hot.si()) {
            throw new OutOfRangeException(
                    "mean temperature",
                    mean.textInBothSystems(),
                    "at or below the highest temperature " + hot.textInBothSystems(),
                    REMEDY);
        }
        if (safety != null && hot != null && safety.si() < hot.si()) {
            throw new OutOfRangeException(
                    "safety temperature",
                    safety.textInBothSystems(),
                    "at or above the highest temperature " + hot.textInBothSystems(),
                    REMEDY);
        }
    }

    private static final String REMEDY = "check that the two were not swapped and that their units are right";

    /**
     * Both ends of the range.
     *
     * @param cold lowest (or fill) temperature, or null if not known
     * @param hot highest operating temperature, or null if not known
     * @return the temperatures
     * @throws OutOfRangeException if the highest is not above the lowest
     */
    public static LoopTemperatures between(@Nullable Temperature cold, @Nullable Temperature hot) {
        return new LoopTemperatures(cold, hot, null, null);
    }

    /**
     * Adds the mean of flow and return.
     *
     * @param temperature at full output
     * @return a copy with it
     * @throws OutOfRangeException if it is not between the lowest and the highest
     */
    public LoopTemperatures withMean(Temperature temperature) {
        return new LoopTemperatures(cold, hot, temperature, safety);
    }

    /**
     * Adds the temperature at which the safety device acts.
     *
     * @param temperature its setting plus its positive tolerance
     * @return a copy with it
     * @throws OutOfRangeException if it is below the highest operating temperature
     */
    public LoopTemperatures withSafety(Temperature temperature) {
        return new LoopTemperatures(cold, hot, mean, temperature);
    }

    private static void requireAbove(
            String name, @Nullable Temperature upper, String otherName, @Nullable Temperature lower) {
        if (upper != null && lower != null && upper.si() <= lower.si()) {
            throw new OutOfRangeException(
                    name, upper.textInBothSystems(), "above " + otherName + " " + lower.textInBothSystems(), REMEDY);
        }
    }
}
