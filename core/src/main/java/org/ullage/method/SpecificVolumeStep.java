package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** A fluid's specific volume as a step. */
final class SpecificVolumeStep {

    /** Digits that let a reader redo the ratio of two nearly equal numbers. */
    private static final int RATIO_DIGITS = 9;

    private SpecificVolumeStep() {}

    static Step of(String where, String symbol, LoopFluid fluid, Temperature temperature, AbsolutePressure pressure) {
        return new Step(
                "specific volume of " + fluid.name() + ", " + where + ", by " + fluid.model(),
                "v(t, p)",
                List.of(Term.of("t", temperature), Term.of("p", pressure)),
                Term.of(symbol, fluid.specificVolume(temperature, pressure), RATIO_DIGITS),
                fluid.source());
    }
}
