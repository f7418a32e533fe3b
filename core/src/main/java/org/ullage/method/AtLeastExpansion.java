package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * A polynomial rule that never counts less than a least expansion, and counts just that below the polynomial's range: for loops that
 * are cold in operation. Immutable.
 *
 * @param rule the polynomial
 * @param least least share of the contents
 */
public record AtLeastExpansion(PolynomialExpansion rule, Constant least) implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return isBelowRange(states) ? least.value() : Math.max(least.value(), rule.fraction(fluid, states));
    }

    private boolean isBelowRange(ThermalStates states) {
        return states.hotKelvins() < rule.range().lowest().si();
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return !fluid.isWater() && rule.needsCold(fluid);
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        return fraction == least.value()
                ? List.of(Step.given(
                        "least expansion the rule counts, as a share of the contents",
                        Term.number("e", fraction),
                        least.symbol(),
                        least.source()))
                : rule.steps(fluid, states, fraction);
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        List<Caution> warnings = new ArrayList<>();
        if (fraction(fluid, states) == least.value()) {
            warnings.add(new Caution(
                    "The least expansion of this rule was counted, " + least.text() + " of the contents.",
                    least.source()));
        }
        if (!fluid.isWater()) {
            warnings.add(WaterRule.isNotFor(fluid, source()));
        }
        return warnings;
    }

    @Override
    public Source source() {
        return rule.source();
    }

    /**
     * The convention in words.
     *
     * @return the polynomial and the least value
     */
    @Override
    public String toString() {
        return rule + ", at least " + least.text();
    }
}
