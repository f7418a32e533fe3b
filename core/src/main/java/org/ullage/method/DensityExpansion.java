package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
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
        Step cold = SpecificVolumeStep.of("cold", "v_1", fluid, states.cold(), states.coldPressure());
        Step hot = SpecificVolumeStep.of("hot", "v_2", fluid, states.hot(), states.hotPressure());
        Step ratio = new Step(
                "expansion of the fluid, as a share of the contents",
                "v_2 / v_1 - 1",
                List.of(cold.result(), hot.result()),
                Term.number("e", fraction),
                source);
        return List.of(cold, hot, ratio);
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
