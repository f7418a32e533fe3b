package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * A rule that gives the expansion of water as c0 + c1 T + c2 T^2 of the highest temperature alone, as several standards print
 * it. Immutable.
 *
 * @param unit the unit of T the coefficients are written for
 * @param c0 constant term
 * @param c1 linear coefficient
 * @param c2 quadratic coefficient
 * @param range the temperatures it may be used for, and what to say about parts of them
 * @param forMixtures what to use for a fluid other than water, or null to use this rule all the same and warn
 * @param source where the rule comes from
 */
public record PolynomialExpansion(
        Unit<Temperature> unit,
        Constant c0,
        Constant c1,
        Constant c2,
        TemperatureRange range,
        @Nullable DensityExpansion forMixtures,
        Source source)
        implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        if (forMixtures != null && !fluid.isWater()) {
            return forMixtures.fraction(fluid, states);
        }
        double kelvins = states.hotKelvins();
        if (needsHot() || states.hotGiven()) {
            range.require(kelvins);
        }
        double t = unit.numberOf(kelvins);
        double fraction = c0.value() + t * (c1.value() + t * c2.value());
        if (fraction <= 0) {
            throw new OutOfRangeException(
                    "highest temperature",
                    states.hot().textInBothSystems(),
                    "where this rule's expansion is above zero",
                    "the rule is a fit for hot loops; take a method that uses the fluid's density");
        }
        return fraction;
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return forMixtures != null && !fluid.isWater();
    }

    @Override
    public boolean needsHot() {
        return c1.value() != 0 || c2.value() != 0;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        if (forMixtures != null && !fluid.isWater()) {
            return forMixtures.steps(fluid, states, fraction);
        }
        if (!needsHot()) {
            return List.of(Step.given(
                    "expansion of water the rule counts whatever the temperature, as a share of the contents",
                    Term.number("e", fraction),
                    "the rule's number",
                    source));
        }
        List<Term> terms = new ArrayList<>();
        terms.add(Term.in(unit, "T", states.hot()));
        for (Constant coefficient : List.of(c0, c1, c2)) {
            terms.add(Term.of(coefficient));
        }
        return List.of(new Step(
                "expansion of water by the rule's formula, as a share of the contents",
                polynomial(Constant::symbol),
                terms,
                Term.number("e", fraction),
                source));
    }

    /** The polynomial without the coefficients that are zero. */
    private String polynomial(Function<Constant, String> show) {
        List<String> parts = new ArrayList<>();
        addPart(parts, c0, show, "");
        addPart(parts, c1, show, " * T");
        addPart(parts, c2, show, " * T^2");
        return String.join(" + ", parts);
    }

    private static void addPart(
            List<String> parts, Constant coefficient, Function<Constant, String> show, String power) {
        if (coefficient.value() != 0) {
            parts.add(show.apply(coefficient) + power);
        }
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        if (fluid.isWater()) {
            List<Caution> warnings = new ArrayList<>();
            if (needsHot() || states.hotGiven()) {
                warnings.addAll(range.remarks(states.hotKelvins()));
            }
            warnings.addAll(RuleFill.warnings(range.countsFrom(), states, source));
            return warnings;
        }
        return forMixtures != null ? List.of() : List.of(WaterRule.isNotFor(fluid, source));
    }

    /**
     * The convention in words.
     *
     * @return the formula with its numbers
     */
    @Override
    public String toString() {
        return polynomial(coefficient -> String.valueOf(coefficient.value()))
                + (needsHot() ? " (T in " + unit + ")" : " whatever the temperature")
                + (forMixtures == null ? "" : "; for mixtures " + forMixtures);
    }
}
