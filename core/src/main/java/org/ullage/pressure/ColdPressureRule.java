package org.ullage.pressure;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * How a method finds the lowest pressure at the vessel from the static head: p_i = p_st + margin, raised to p_st + p_v where the
 * rule counts the vapour pressure, and never below a floor if there is one. Immutable.
 *
 * @param margin pressure to keep at the highest point, cold
 * @param countsVapourPressure whether p_st + p_v is a lower limit too, p_v being the gauge vapour pressure at the highest
 *     temperature
 * @param floor lowest absolute pressure at the vessel, or null if the rule has none
 * @param source where the rule comes from
 */
public record ColdPressureRule(
        PressureDifference margin,
        boolean countsVapourPressure,
        @Nullable AbsolutePressure floor,
        Source source) implements Serializable {

    /**
     * Static head and a margin, nothing else.
     *
     * @param margin pressure to keep at the highest point
     * @param source where the margin comes from
     * @return the rule
     */
    public static ColdPressureRule staticHeadPlus(PressureDifference margin, Source source) {
        return new ColdPressureRule(margin, false, null, source);
    }

    /**
     * The same rule with the vapour pressure as a second lower limit.
     *
     * @return a new rule
     */
    public ColdPressureRule orVapourPressure() {
        return new ColdPressureRule(margin, true, floor, source);
    }

    /**
     * The same rule with a floor.
     *
     * @param lowest lowest absolute pressure at the vessel
     * @param whole where the rule with its floor comes from
     * @return a new rule
     */
    public ColdPressureRule notBelow(AbsolutePressure lowest, Source whole) {
        return new ColdPressureRule(margin, countsVapourPressure, lowest, whole);
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
        double head = StaticHead.pascals(headMetres);
        double cold = head + margin.si() + ambientPascals;
        if (countsVapourPressure) {
            cold = Math.max(cold, head + vapourPascals);
        }
        return floor == null ? cold : Math.max(cold, floor.si());
    }

    /**
     * The rule's steps.
     *
     * @param head height of the highest point above the vessel
     * @param vapour absolute vapour pressure at the highest temperature, or null if the rule does not count it
     * @param ambient pressure of the air
     * @param result symbol and value of the result of {@link #pascals}
     * @return the steps in order
     */
    public List<Step> steps(Length head, @Nullable AbsolutePressure vapour, AbsolutePressure ambient, Term result) {
        List<Step> steps = new ArrayList<>();
        steps.add(StaticHead.step(head));
        List<Term> terms = new ArrayList<>(
                List.of(Term.of("p_st", StaticHead.of(head)), Term.of("d_cold", margin), Term.of("p_a", ambient)));
        String formula = "p_st + d_cold + p_a";
        if (vapour != null) {
            formula = "max(" + formula + ", p_st + p_vap)";
            terms.add(Term.of("p_vap", vapour));
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
        String words = "static head + " + margin.text(Units.BAR);
        if (countsVapourPressure) {
            words += ", and at least static head + vapour pressure";
        }
        return floor == null ? words : words + ", not below " + floor.text(Units.BAR);
    }
}
