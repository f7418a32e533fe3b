package org.ullage.pressure;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * How a method finds the lowest pressure at the vessel from the static head: p_i = f p_st + margin, with the vapour pressure as a
 * second lower limit or added, and never below a floor if there is one. A rule that is a table has one fixed pressure instead.
 * Immutable.
 *
 * @param headFactor factor f on the static head, 1 in most rules
 * @param margin pressure to keep at the highest point, cold
 * @param vapour how the vapour pressure at the highest temperature counts
 * @param floor lowest absolute pressure at the vessel, or null if the rule has none
 * @param fixed the one gauge pressure the rule was made for, or null if it follows the static head
 * @param source where the rule comes from
 */
public record ColdPressureRule(
        double headFactor,
        PressureDifference margin,
        VapourPressure vapour,
        @Nullable AbsolutePressure floor,
        @Nullable GaugePressure fixed,
        Source source)
        implements Serializable {

    /** How a rule counts the vapour pressure of the fluid at its highest temperature. */
    public enum VapourPressure {
        /** Not at all. */
        IGNORED,
        /** Static head + vapour pressure is a lower limit beside static head + margin. */
        LIMIT,
        /** Where it is above atmospheric pressure, its gauge value is added to static head + margin. */
        ADDED
    }

    /**
     * Checks the factor.
     *
     * @param headFactor factor on the static head
     * @param margin pressure to keep at the highest point
     * @param vapour how the vapour pressure counts
     * @param floor lowest absolute pressure, or null
     * @param fixed the one gauge pressure the rule was made for, or null
     * @param source where the rule comes from
     * @throws OutOfRangeException if the factor is below 1 or not finite
     */
    public ColdPressureRule {
        if (!(headFactor >= 1 && Double.isFinite(headFactor))) {
            throw new OutOfRangeException(
                    "factor on the static head",
                    String.valueOf(headFactor),
                    "1 or more and finite",
                    "less would leave the top of the loop under vacuum");
        }
    }

    /**
     * Static head and a margin, nothing else.
     *
     * @param margin pressure to keep at the highest point
     * @param source where the margin comes from
     * @return the rule
     */
    public static ColdPressureRule staticHeadPlus(PressureDifference margin, Source source) {
        return new ColdPressureRule(1, margin, VapourPressure.IGNORED, null, null, source);
    }

    /**
     * One pressure whatever the static head, as in a table that was made for it.
     *
     * @param pressure gauge pressure at the vessel, cold
     * @param source where the rule comes from
     * @return the rule
     */
    public static ColdPressureRule fixed(GaugePressure pressure, Source source) {
        return new ColdPressureRule(1, PressureDifference.bar(0), VapourPressure.IGNORED, null, pressure, source);
    }

    /**
     * The same rule with another way to count the vapour pressure.
     *
     * @param how as a second lower limit, added or not at all
     * @return a new rule
     */
    public ColdPressureRule with(VapourPressure how) {
        return new ColdPressureRule(headFactor, margin, how, floor, fixed, source);
    }

    /**
     * The same rule with a factor on the static head.
     *
     * @param factor 1 or more
     * @param whole where the rule with its factor comes from
     * @return a new rule
     * @throws OutOfRangeException if the factor is below 1 or not finite
     */
    public ColdPressureRule withHeadFactor(double factor, Source whole) {
        return new ColdPressureRule(factor, margin, vapour, floor, fixed, whole);
    }

    /**
     * The same rule with a floor.
     *
     * @param lowest lowest absolute pressure at the vessel
     * @param whole where the rule with its floor comes from
     * @return a new rule
     */
    public ColdPressureRule notBelow(AbsolutePressure lowest, Source whole) {
        return new ColdPressureRule(headFactor, margin, vapour, lowest, fixed, whole);
    }

    /**
     * The cold pressure at the vessel on bare SI numbers.
     *
     * @param headMetres height of the highest point above the vessel
     * @param vapourPascals absolute vapour pressure of the fluid at the highest temperature; ignored if the rule does not count
     *     it
     * @param ambientPascals absolute pressure of the air
     * @return absolute pascals
     */
    public double pascals(double headMetres, double vapourPascals, double ambientPascals) {
        if (fixed != null) {
            return fixed.si() + ambientPascals;
        }
        double head = StaticHead.pascals(headMetres);
        double cold = headFactor * head + margin.si() + ambientPascals;
        cold = switch (vapour) {
            case IGNORED -> cold;
            case LIMIT -> Math.max(cold, head + vapourPascals);
            case ADDED -> cold + Math.max(0, vapourPascals - ambientPascals);
        };
        return floor == null ? cold : Math.max(cold, floor.si());
    }

    /**
     * Whether the rule needs the vapour pressure.
     *
     * @return false if it ignores it
     */
    public boolean countsVapourPressure() {
        return vapour != VapourPressure.IGNORED;
    }

    /**
     * The step of a rule with one fixed pressure.
     *
     * @param pressure the fixed pressure
     * @param ambient pressure of the air
     * @param result symbol and value of the result of {@link #pascals}
     * @return the step
     */
    public Step fixedStep(GaugePressure pressure, AbsolutePressure ambient, Term result) {
        return new Step(
                "cold pressure at the vessel, the one the rule was made for",
                "p_fix + p_a",
                List.of(Term.of("p_fix", pressure), Term.of("p_a", ambient)),
                result,
                source);
    }

    /**
     * The steps of a rule that follows the static head.
     *
     * @param head height of the highest point above the vessel
     * @param vapourPressure absolute vapour pressure at the highest temperature, or null if the rule does not count it
     * @param ambient pressure of the air
     * @param result symbol and value of the result of {@link #pascals}
     * @return the steps in order
     */
    public List<Step> steps(
            Length head, @Nullable AbsolutePressure vapourPressure, AbsolutePressure ambient, Term result) {
        List<Step> steps = new ArrayList<>();
        steps.add(StaticHead.step(head));
        List<Term> terms = new ArrayList<>(
                List.of(Term.of("p_st", StaticHead.of(head)), Term.of("d_cold", margin), Term.of("p_a", ambient)));
        String formula = "p_st + d_cold + p_a";
        if (headFactor != 1) {
            formula = "f_st * " + formula;
            terms.add(Term.number("f_st", headFactor));
        }
        if (vapourPressure != null) {
            formula = vapour == VapourPressure.LIMIT
                    ? "max(" + formula + ", p_st + p_vap)"
                    : formula + " + max(0, p_vap - p_a)";
            terms.add(Term.of("p_vap", vapourPressure));
        }
        if (floor != null) {
            formula = "max(" + formula + ", p_floor)";
            terms.add(Term.of("p_floor", floor));
        }
        steps.add(new Step("cold pressure at the vessel", formula, terms, result, source));
        return steps;
    }

    /**
     * The rule in words.
     *
     * @return such as {@code static head + 0.2 bar}
     */
    @Override
    public String toString() {
        if (fixed != null) {
            return fixed.text(Units.PSI, 4) + " (" + fixed.text(Units.BAR, 4) + ")";
        }
        String words = (headFactor == 1 ? "" : headFactor + " x ") + "static head"
                + (margin.si() == 0 ? "" : " + " + margin.text(Units.BAR));
        words += switch (vapour) {
            case IGNORED -> "";
            case LIMIT -> ", and at least static head + vapour pressure";
            case ADDED -> " + vapour pressure above atmospheric";
        };
        return floor == null ? words : words + ", not below " + floor.text(Units.BAR);
    }
}
