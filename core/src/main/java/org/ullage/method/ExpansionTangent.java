package org.ullage.method;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;

/**
 * The expansion between two fixed temperatures as it follows the pressures, by the little that a liquid gives way: along its tangent at
 * the pressures of one sizing, where it is the rule's own number to the last bit.
 */
final class ExpansionTangent implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Relative step for the slope; upwards, where the fluid stays liquid. */
    private static final double STEP = 1e-2;

    private final double fraction;
    private final double cold;
    private final double last;
    private final double slopeOfCold;
    private final double slopeOfLast;

    ExpansionTangent(SizingNumbers numbers) {
        ExpansionRule rule = numbers.method.expansion();
        LoopFluid fluid = numbers.job.loop().fluid();
        ThermalStates states = numbers.states;
        this.fraction = numbers.expansionFraction;
        this.cold = states.coldPascals();
        this.last = states.hotPascals();
        double higherCold = rule.fraction(fluid, states.at(cold * (1 + STEP), last));
        double higherLast = rule.fraction(fluid, states.at(cold, last * (1 + STEP)));
        this.slopeOfCold = (higherCold - fraction) / (cold * STEP);
        this.slopeOfLast = (higherLast - fraction) / (last * STEP);
    }

    /** As a share of the contents, before any pipe credit; the pressures are absolute. */
    double fraction(double coldPascals, double lastPascals) {
        return fraction + slopeOfCold * (coldPascals - cold) + slopeOfLast * (lastPascals - last);
    }
}
