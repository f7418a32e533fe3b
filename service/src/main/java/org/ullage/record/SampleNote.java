package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.condition.FluidSample;
import org.ullage.condition.Look;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.Smell;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * A sample of the fluid as a file has it; {@link #sample()} is the same for judging. The limits of the fluid's data sheet are not
 * kept here. Immutable.
 *
 * @param traits what decides which limits apply
 * @param readings what was measured, each quantity once
 * @param look how it looks, or null if not recorded
 * @param smell how it smells, or null if not recorded
 * @param freezing freezing point as measured, or null if not recorded
 * @param lowest lowest temperature the loop must stand, or null if not recorded
 * @param hottest highest temperature the fluid has seen, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record SampleNote(
        List<LoopTrait> traits,
        List<SampleReading> readings,
        @Nullable Look look,
        @Nullable Smell smell,
        @Nullable Temperature freezing,
        @Nullable Temperature lowest,
        @Nullable Temperature hottest,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param traits what decides which limits apply
     * @param readings what was measured, each quantity once
     * @param look how it looks, or null if not recorded
     * @param smell how it smells, or null if not recorded
     * @param freezing freezing point as measured, or null if not recorded
     * @param lowest lowest temperature the loop must stand, or null if not recorded
     * @param hottest highest temperature the fluid has seen, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws OutOfRangeException if a quantity stands twice, or a loop is run both on low-salt and on saline water
     */
    public SampleNote {
        traits = Kept.list("traits", traits);
        readings = Kept.list("readings", readings);
        unknownFields = Kept.fields(unknownFields);
        asSample(traits, readings, look, smell, freezing, lowest, hottest);
    }

    /**
     * Takes what is known.
     *
     * @param traits what decides which limits apply
     * @param readings what was measured, each quantity once
     * @param look how it looks, or null if not recorded
     * @param smell how it smells, or null if not recorded
     * @param freezing freezing point as measured, or null if not recorded
     * @param lowest lowest temperature the loop must stand, or null if not recorded
     * @param hottest highest temperature the fluid has seen, or null if not recorded
     * @throws OutOfRangeException if a quantity stands twice, or a loop is run both on low-salt and on saline water
     */
    public SampleNote(
            List<LoopTrait> traits,
            List<SampleReading> readings,
            @Nullable Look look,
            @Nullable Smell smell,
            @Nullable Temperature freezing,
            @Nullable Temperature lowest,
            @Nullable Temperature hottest) {
        this(traits, readings, look, smell, freezing, lowest, hottest, Map.of());
    }

    /**
     * Takes a sample, without the limits of a data sheet.
     *
     * @param sample the sample
     * @return the note
     */
    public static SampleNote of(FluidSample sample) {
        return new SampleNote(
                sample.traits().stream().sorted().toList(),
                sample.values().stream().map(SampleReading::of).toList(),
                sample.look(),
                sample.smell(),
                sample.freezing(),
                sample.lowest(),
                sample.hottest());
    }

    /**
     * The sample for judging.
     *
     * @return without the limits of a data sheet
     */
    public FluidSample sample() {
        return asSample(traits, readings, look, smell, freezing, lowest, hottest);
    }

    private static FluidSample asSample(
            List<LoopTrait> traits,
            List<SampleReading> readings,
            @Nullable Look look,
            @Nullable Smell smell,
            @Nullable Temperature freezing,
            @Nullable Temperature lowest,
            @Nullable Temperature hottest) {
        return new FluidSample(
                Set.copyOf(traits),
                readings.stream().map(SampleReading::value).toList(),
                look,
                smell,
                freezing,
                lowest,
                hottest,
                List.of());
    }
}
