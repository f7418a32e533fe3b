package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * A rule that counts one share of the contents whatever fluid and temperatures are, from filling to the hottest state. Immutable.
 *
 * @param share of the contents, zero if the rule counts no expansion of its own
 */
public record ShareExpansion(Constant share) implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return share.value();
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return false;
    }

    @Override
    public boolean needsHot() {
        return false;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        return List.of(Step.given(
                "expansion as the rule has it, as a share of the contents",
                Term.number("e", fraction),
                "one number for all loops",
                share.source()));
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        return List.of();
    }

    @Override
    public Source source() {
        return share.source();
    }

    /**
     * The convention in words.
     *
     * @return such as {@code 0.085 of the contents}
     */
    @Override
    public String toString() {
        return share.value() + " of the contents";
    }
}
