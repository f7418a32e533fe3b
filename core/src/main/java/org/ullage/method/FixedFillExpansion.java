package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The fluid's own expansion from a fill temperature that the rule fixes: v_2/v_fill - 1, whatever the loop's lowest temperature.
 * Immutable.
 *
 * @param fill the rule's fill temperature
 * @param source where the convention comes from
 */
public record FixedFillExpansion(Temperature fill, Source source) implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return fluid.specificVolumeSi(states.hotKelvins(), states.hotPascals())
                        / fluid.specificVolumeSi(fill.si(), states.coldPascals())
                - 1;
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return false;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        Step cold = SpecificVolumeStep.of("at the rule's fill temperature", "v_1", fluid, fill, states.coldPressure());
        Step hot = SpecificVolumeStep.of("hot", "v_2", fluid, states.hot(), states.hotPressure());
        Step ratio = new Step(
                "expansion of the fluid from the rule's fill temperature, as a share of the contents",
                "v_2 / v_1 - 1",
                List.of(cold.result(), hot.result()),
                Term.number("e", fraction),
                source);
        return List.of(cold, hot, ratio);
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        return RuleFill.warnings(fill, states, source);
    }

    /**
     * The convention in words.
     *
     * @return the words
     */
    @Override
    public String toString() {
        return "the fluid's own density, from a fill at " + fill.text(UnitSystem.SI);
    }
}
