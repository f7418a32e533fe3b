package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * Expansion in proportion to the temperature rise, e = beta dt, as some rules for open tanks print it. Water's expansion bends
 * upwards, so one coefficient is right near one temperature only. Immutable.
 *
 * @param perKelvin beta, share of the contents for each kelvin
 * @param fill the temperature the rule counts from, or null for the loop's lowest
 * @param source where the rule comes from
 */
public record RiseExpansion(Constant perKelvin, @Nullable Temperature fill, Source source) implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        return perKelvin.value() * (states.hotKelvins() - from(states));
    }

    private double from(ThermalStates states) {
        return fill == null ? states.coldKelvins() : fill.si();
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return fill == null;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        TemperatureDifference rise = TemperatureDifference.ofSi(states.hotKelvins() - from(states));
        return List.of(new Step(
                "expansion by the rule's coefficient, as a share of the contents",
                perKelvin.symbol() + " * dt",
                List.of(Term.of(perKelvin), Term.in(Units.KELVIN_DIFFERENCE, "dt", rise)),
                Term.number("e", fraction),
                source));
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        List<Caution> warnings = new ArrayList<>();
        warnings.add(new Caution(
                "This rule takes expansion in proportion to the rise; water's is not, so the rule is right near one temperature"
                        + " only.",
                source));
        if (fill != null) {
            warnings.addAll(RuleFill.warnings(fill, states, source));
        }
        if (!fluid.isWater()) {
            warnings.add(WaterRule.isNotFor(fluid, source));
        }
        return warnings;
    }

    /**
     * The convention in words.
     *
     * @return such as {@code 0.0006 1/K x rise from the lowest temperature}
     */
    @Override
    public String toString() {
        return perKelvin.text() + " x rise from "
                + (fill == null ? "the lowest temperature" : fill.text(UnitSystem.SI));
    }
}
