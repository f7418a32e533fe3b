package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The fluid's own expansion: v_2/v_1 - 1, both specific volumes from the one model in the loop, at the pressures of the vessel.
 * Immutable.
 *
 * @param source where the convention comes from
 */
public record DensityExpansion(Source source) implements ExpansionRule {

    /** Digits that let a reader redo the ratio of two nearly equal numbers. */
    private static final int RATIO_DIGITS = 9;

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return fluid.specificVolumeSi(states.hotKelvins(), states.hotPascals())
                        / fluid.specificVolumeSi(states.coldKelvins(), states.coldPascals())
                - 1;
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return true;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        Step cold = volumeStep("cold", "v_1", fluid, states.cold(), states.coldPressure());
        Step hot = volumeStep("hot", "v_2", fluid, states.hot(), states.hotPressure());
        Step ratio = new Step(
                "expansion of the fluid, as a share of the contents",
                "v_2 / v_1 - 1",
                List.of(cold.result(), hot.result()),
                Term.number("e", fraction),
                source);
        return List.of(cold, hot, ratio);
    }

    private static Step volumeStep(
            String when, String symbol, LoopFluid fluid, Temperature temperature, AbsolutePressure pressure) {
        SpecificVolume volume = fluid.specificVolume(temperature, pressure);
        return new Step(
                "specific volume of " + fluid.name() + ", " + when + ", by " + fluid.model(),
                "v(t, p)",
                List.of(Term.of("t", temperature), Term.of("p", pressure)),
                Term.of(symbol, volume, RATIO_DIGITS),
                fluid.source());
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        return List.of();
    }

    /**
     * The convention in words.
     *
     * @return the words
     */
    @Override
    public String toString() {
        return "the fluid's own density at both temperatures";
    }
}
