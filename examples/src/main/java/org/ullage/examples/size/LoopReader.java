package org.ullage.examples.size;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.fluids.Fluids;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** Turns the cells of one line into a job. Every refusal names its column. */
final class LoopReader {

    /** Far finer than any gauge, far coarser than a rounding error. */
    private static final double STEPS_PER_PASCAL = 1e6;

    private final LoopLine line;

    private LoopReader(LoopLine line) {
        this.line = line;
    }

    /**
     * Reads a line.
     *
     * @throws BadLineException if a cell cannot be read or is not allowed
     */
    static LoopCase read(LoopLine line) {
        LoopReader reader = new LoopReader(line);
        Method method = reader.required(Column.METHOD, Methods::named);
        SizingJob job = reader.job();
        return new LoopCase(line, method, job, AnswerUnits.of(line));
    }

    private SizingJob job() {
        VesselType vessel = required(Column.VESSEL, Words::vessel);
        Loop loop = loop();
        LoopTemperatures temperatures = temperatures();
        return new SizingJob(loop, vessel, temperatures, pressures());
    }

    /** A file has one hot temperature, which is taken in the sense of each method. */
    private LoopTemperatures temperatures() {
        Temperature cold = optional(Column.COLD, Temperature::parse);
        LoopTemperatures range = optional(Column.HOT, text -> LoopTemperatures.between(cold, Temperature.parse(text)));
        return range == null ? LoopTemperatures.between(cold, null) : range;
    }

    private Loop loop() {
        LoopFluid fluid = required(Column.FLUID, Fluids::parse);
        Loop.PipeStep contents = required(Column.CONTENTS, text -> Loop.withContents(Volume.parse(text)));
        PipeMaterial pipe = optional(Column.PIPE, Words::pipe);
        return (pipe == null ? contents.pipeNotStated() : contents.pipe(pipe)).filledWith(fluid);
    }

    /** One air pressure for all methods of a line, so that a pressure given as absolute means the same to each of them. */
    private PressureInputs pressures() {
        AbsolutePressure site = optional(Column.ATMOSPHERE, Atmosphere::parse);
        AbsolutePressure air = site == null ? AbsolutePressure.STANDARD_ATMOSPHERE : site;
        return PressureInputs.NONE
                .withColdPressure(gauge(Column.COLD_PRESSURE, air))
                .withFinalPressure(gauge(Column.FINAL_PRESSURE, air))
                .withStaticHead(optional(Column.STATIC_HEAD, Length::parse))
                .withReliefSetting(gauge(Column.RELIEF_SETTING, air))
                .withPreCharge(gauge(Column.PRECHARGE, air))
                .withAtmosphere(air);
    }

    private @Nullable GaugePressure gauge(Column column, AbsolutePressure air) {
        return optional(column, text -> aboveVacuum(evened(GaugePressure.parse(text, air)), air));
    }

    /** So that one pressure written in two ways, such as gauge and absolute, is not above itself by a rounding error. */
    private static GaugePressure evened(GaugePressure pressure) {
        return GaugePressure.ofSi(Math.rint(pressure.si() * STEPS_PER_PASCAL) / STEPS_PER_PASCAL);
    }

    private static GaugePressure aboveVacuum(GaugePressure pressure, AbsolutePressure air) {
        // Called for its refusal of a pressure below vacuum.
        pressure.absolute(air);
        return pressure;
    }

    private <T> T required(Column column, Function<String, T> reading) {
        T value = optional(column, reading);
        if (value == null) {
            throw BadLineException.in(column, "it is blank, and every line needs it; fill it in");
        }
        return value;
    }

    private <T> @Nullable T optional(Column column, Function<String, T> reading) {
        String text = line.text(column);
        if (text == null) {
            return null;
        }
        try {
            return reading.apply(text);
        } catch (IllegalArgumentException e) {
            throw BadLineException.in(column, e);
        }
    }
}
