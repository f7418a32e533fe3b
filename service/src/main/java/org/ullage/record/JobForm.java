package org.ullage.record;

import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** The way from a job to its record and back. */
final class JobForm {

    private static final Map<String, PipeMaterial> PIPES =
            Map.of("steel", PipeMaterial.STEEL, "copper", PipeMaterial.COPPER, "none", PipeMaterial.RIGID);

    private JobForm() {}

    static JobRecord of(SizingJob job, Method method, String fluid) {
        Loop loop = job.loop();
        PipeMaterial pipe = loop.pipe();
        String word = pipe == null ? null : word(pipe);
        StagnationContents boiling = loop.stagnation();
        LoopTemperatures temperatures = job.temperatures();
        PressureInputs pressures = job.pressures();
        return new JobRecord(
                method.name(),
                job.vessel().kind(),
                job.vessel().acceptanceLimit(),
                loop.contents(),
                word,
                pipe == null || PIPES.containsKey(String.valueOf(word)) ? null : pipe.linearExpansion(),
                fluid,
                loop.fluid().model(),
                temperatures.cold(),
                temperatures.hot(),
                temperatures.mean(),
                temperatures.safety(),
                pressures.coldPressure(),
                pressures.finalPressure(),
                pressures.staticHead(),
                pressures.reliefSetting(),
                pressures.preCharge(),
                pressures.atmosphere(),
                pressures.reliefMargin(),
                PlaceRecord.of(pressures.place()),
                boiling == null ? null : boiling.collectors(),
                boiling == null ? null : boiling.pipe(),
                Map.of());
    }

    private static String word(PipeMaterial pipe) {
        return PIPES.entrySet().stream()
                .filter(known -> known.getValue().equals(pipe))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(pipe.name());
    }

    static SizingJob job(JobRecord record, Function<String, ? extends LoopFluid> fluids) {
        VesselType vessel = record.acceptanceLimit() == null
                ? VesselType.of(record.vessel())
                : new VesselType(record.vessel(), record.acceptanceLimit());
        LoopTemperatures temperatures =
                new LoopTemperatures(record.cold(), record.hot(), record.mean(), record.safety());
        PlaceRecord place = record.place();
        PressureInputs pressures = new PressureInputs(
                record.coldPressure(),
                record.finalPressure(),
                record.staticHead(),
                record.reliefSetting(),
                record.preCharge(),
                record.atmosphere(),
                record.reliefMargin(),
                place == null ? VesselPlace.AT_VALVE : place.place());
        return new SizingJob(loop(record, fluids), vessel, temperatures, pressures);
    }

    private static Loop loop(JobRecord record, Function<String, ? extends LoopFluid> fluids) {
        Loop.PipeStep contents = Loop.withContents(record.contents());
        PipeMaterial pipe = pipe(record);
        Loop loop = (pipe == null ? contents.pipeNotStated() : contents.pipe(pipe)).filledWith(fluid(record, fluids));
        boolean boils = record.collectors() != null || record.boilingPipe() != null;
        return boils
                ? loop.stagnating(new StagnationContents(or(record.collectors()), or(record.boilingPipe())))
                : loop;
    }

    private static Volume or(@Nullable Volume recorded) {
        return recorded == null ? Volume.litres(0) : recorded;
    }

    private static @Nullable PipeMaterial pipe(JobRecord record) {
        String name = record.pipe();
        if (name == null) {
            return null;
        }
        if (record.pipeExpansion() != null) {
            return new PipeMaterial(name, record.pipeExpansion(), Source.given());
        }
        return Kept.present(
                "linear expansion of pipe \"" + PlainText.shortened(name) + "\"",
                PIPES.get(name),
                "a pipe that is not one of "
                        + String.join(", ", PIPES.keySet().stream().sorted().toList()));
    }

    /** Another model of the same fluid would give another answer without a word. */
    private static LoopFluid fluid(JobRecord record, Function<String, ? extends LoopFluid> fluids) {
        LoopFluid fluid = fluids.apply(record.fluid());
        String recorded = record.fluidModel();
        if (recorded != null && !recorded.equals(fluid.model())) {
            throw new OutOfRangeException(
                    "model of the fluid",
                    "\"" + fluid.model() + "\"",
                    "\"" + PlainText.shortened(recorded) + "\" as recorded",
                    "name the model with the fluid, or take fluidModel out of the record to accept the other one");
        }
        return fluid;
    }
}
