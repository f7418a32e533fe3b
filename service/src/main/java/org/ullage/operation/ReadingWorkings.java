package org.ullage.operation;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Derives the steps of {@link TwoReadings} on demand, from the same numbers. */
final class ReadingWorkings {

    /** Digits that let a reader redo the ratio of two nearly equal numbers. */
    private static final int RATIO_DIGITS = 9;

    private ReadingWorkings() {}

    static Workings of(ReadingNumbers numbers, LoopFluid fluid, PipeMaterial pipe) {
        Step water = water(numbers);
        Step expansion = expansion(numbers, fluid, pipe);
        Step contents = new Step(
                "contents at the cold reading",
                "V_x / e_n",
                List.of(water.result(), expansion.result()),
                Term.of("V_s", Volume.ofSi(numbers.contents())),
                Source.computed("conservation of mass", "what the loop pushes out is what the vessel takes in"));
        return new Workings("Contents from two readings", List.of(water, expansion, contents));
    }

    private static Step water(ReadingNumbers numbers) {
        return new Step(
                "water that the vessel took in between the readings",
                "V_n * p_0 * (1 / p_1 - 1 / p_2)",
                List.of(
                        Term.of("V_n", Volume.ofSi(numbers.of(ReadingInput.NOMINAL_VOLUME))),
                        pressure("p_0", numbers.of(ReadingInput.CHARGE)),
                        pressure("p_1", numbers.of(ReadingInput.COLD_PRESSURE)),
                        pressure("p_2", numbers.of(ReadingInput.HOT_PRESSURE))),
                Term.of("V_x", Volume.ofSi(numbers.waterTakenIn())),
                GasLaw.SOURCE);
    }

    private static Term pressure(String symbol, double si) {
        return Term.of(symbol, AbsolutePressure.ofSi(si));
    }

    private static Step expansion(ReadingNumbers numbers, LoopFluid fluid, PipeMaterial pipe) {
        return new Step(
                "net expansion of one volume of contents, " + fluid.name() + " by " + fluid.model() + " in "
                        + pipe.name()
                        + ", from " + temperature(numbers, ReadingInput.COLD_TEMPERATURE) + " to "
                        + temperature(numbers, ReadingInput.HOT_TEMPERATURE),
                "v_2 / v_1 - 1 - 3 * alpha * dt",
                List.of(
                        Term.of("v_1", SpecificVolume.ofSi(numbers.coldSpecificVolume()), RATIO_DIGITS),
                        Term.of("v_2", SpecificVolume.ofSi(numbers.hotSpecificVolume()), RATIO_DIGITS),
                        Term.of("alpha", pipe.linearExpansion()),
                        Term.of("dt", TemperatureDifference.ofSi(numbers.rise()))),
                Term.number("e_n", numbers.netExpansion()),
                fluid.source());
    }

    private static Temperature temperature(ReadingNumbers numbers, ReadingInput input) {
        return Temperature.ofSi(numbers.of(input));
    }
}
