package org.ullage.condition;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * A sample of the fluid: what was measured, seen and smelt, and what the loop has been through. Everything but the traits is optional;
 * what was not looked at is not judged. Immutable.
 *
 * @param traits what decides which limits apply
 * @param values what was measured, each quantity once
 * @param look how it looks, or null
 * @param smell how it smells, or null
 * @param freezing freezing point as measured, or null
 * @param lowest lowest temperature the loop must stand, or null
 * @param hottest highest temperature the fluid has seen, such as at stagnation, or null
 * @param dataSheet limits from the data sheet of the fluid; they decide before published ones
 */
public record FluidSample(
        Set<LoopTrait> traits,
        List<SampleValue> values,
        @Nullable Look look,
        @Nullable Smell smell,
        @Nullable Temperature freezing,
        @Nullable Temperature lowest,
        @Nullable Temperature hottest,
        List<SampleLimit> dataSheet)
        implements Serializable {

    /**
     * Checks that each quantity stands once.
     *
     * @param traits what decides which limits apply
     * @param values what was measured
     * @param look how it looks, or null
     * @param smell how it smells, or null
     * @param freezing freezing point, or null
     * @param lowest lowest temperature to stand, or null
     * @param hottest highest temperature seen, or null
     * @param dataSheet the fluid's own limits
     * @throws OutOfRangeException if a quantity stands twice, or a loop is run both on low-salt and on saline water
     */
    public FluidSample {
        traits = LoopTrait.inOrder(traits);
        values = List.copyOf(values);
        dataSheet = List.copyOf(dataSheet);
        EnumSet<SampleQuantity> seen = EnumSet.noneOf(SampleQuantity.class);
        for (SampleValue value : values) {
            if (!seen.add(value.quantity())) {
                throw new OutOfRangeException(
                        value.quantity().word(),
                        value.text(),
                        "given once in a sample",
                        "make one sample of each reading");
            }
        }
        if (traits.contains(LoopTrait.LOW_SALT) && traits.contains(LoopTrait.SALINE)) {
            throw new OutOfRangeException(
                    "operation", "low-salt and saline", "one of the two", "say which water the loop is run on");
        }
    }

    /**
     * Begins a sample.
     *
     * @param traits what decides which limits apply; none for plain water in a loop of steel and copper
     * @return a sample with nothing measured
     */
    public static FluidSample of(LoopTrait... traits) {
        return new FluidSample(Set.of(traits), List.of(), null, null, null, null, null, List.of());
    }

    /**
     * Adds a measured value.
     *
     * @param value the value
     * @return the sample with it
     * @throws OutOfRangeException if the quantity stands already
     */
    public FluidSample with(SampleValue value) {
        List<SampleValue> more = new ArrayList<>(values);
        more.add(value);
        return new FluidSample(traits, more, look, smell, freezing, lowest, hottest, dataSheet);
    }

    /**
     * Adds how it looks and smells.
     *
     * @param seen how it looks
     * @param smelt how it smells
     * @return the sample with both
     */
    public FluidSample with(Look seen, Smell smelt) {
        return new FluidSample(traits, values, seen, smelt, freezing, lowest, hottest, dataSheet);
    }

    /**
     * Adds the measured freezing point and the cold it must stand.
     *
     * @param measured freezing point, as a refractometer shows it
     * @param needed lowest temperature the loop must stand
     * @return the sample with both
     */
    public FluidSample freezingAt(Temperature measured, Temperature needed) {
        return new FluidSample(traits, values, look, smell, measured, needed, hottest, dataSheet);
    }

    /**
     * Adds the highest temperature the fluid has seen.
     *
     * @param seen such as the stagnation temperature of a collector
     * @return the sample with it
     */
    public FluidSample heatedTo(Temperature seen) {
        return new FluidSample(traits, values, look, smell, freezing, lowest, seen, dataSheet);
    }

    /**
     * Adds a limit of the fluid's own data sheet.
     *
     * @param limit the limit
     * @return the sample with it
     */
    public FluidSample withDataSheet(SampleLimit limit) {
        List<SampleLimit> more = new ArrayList<>(dataSheet);
        more.add(limit);
        return new FluidSample(traits, values, look, smell, freezing, lowest, hottest, more);
    }
}
