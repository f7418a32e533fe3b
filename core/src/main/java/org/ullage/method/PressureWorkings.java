package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** Puts the pressures of one sizing into steps. */
final class PressureWorkings {

    private static final Source PLACE =
            Source.computed("hydrostatic law and pump head", "from where the valve or part is to the vessel");

    private final SizingNumbers numbers;
    private final PressureInputs given;
    private final List<Step> steps = new ArrayList<>();

    private PressureWorkings(SizingNumbers numbers) {
        this.numbers = numbers;
        this.given = numbers.job.pressures();
    }

    static List<Step> of(SizingNumbers numbers) {
        PressureWorkings workings = new PressureWorkings(numbers);
        workings.addCold();
        workings.addFinal();
        workings.addCharge();
        return workings.steps;
    }

    private void addCold() {
        GaugePressure stated = given.coldPressure();
        Length head = given.staticHead();
        GaugePressure fixed = numbers.method.coldPressure().fixed();
        if (fixed != null) {
            Term result = Term.of("p_i", numbers.coldAbsolute());
            steps.add(numbers.method.coldPressure().fixedStep(fixed, numbers.ambientPressure(), result));
        } else if (stated != null) {
            addAbsolute("cold pressure at the vessel", "p_i", stated, numbers.coldAbsolute());
        } else if (head != null) {
            addColdByRule(head);
        }
    }

    private void addColdByRule(Length head) {
        Method method = numbers.method;
        AbsolutePressure vapour = method.coldPressure().countsVapourPressure()
                ? numbers.job.loop().fluid().vapourPressure(numbers.states.hot())
                : null;
        PressureDifference raise = PressureDifference.ofSi(given.place().coldRaisePascals());
        Term cold = Term.of("p_i", numbers.coldAbsolute());
        Term byRule = raise.si() == 0
                ? cold
                : Term.of("p_rule", AbsolutePressure.ofSi(numbers.coldAbsolute().si() - raise.si()));
        steps.addAll(method.coldPressure().steps(head, vapour, numbers.ambientPressure(), byRule));
        if (raise.si() != 0) {
            steps.add(new Step(
                    "cold pressure at the vessel, raised by what the running pump takes away at the top",
                    "p_rule + d_pump",
                    List.of(byRule, Term.of("d_pump", raise)),
                    cold,
                    PLACE));
        }
    }

    private void addFinal() {
        GaugePressure stated = given.finalPressure();
        GaugePressure fixed = numbers.method.finalPressure().fixed();
        if (fixed != null) {
            Term result = Term.of("p_f", numbers.finalAbsolute());
            steps.add(numbers.method.finalPressure().fixedStep(fixed, numbers.ambientPressure(), result));
            return;
        }
        if (stated != null) {
            addAbsolute("final pressure at the vessel", "p_f", stated, numbers.finalAbsolute());
            return;
        }
        VesselPlace.WeakestPart weakest = given.place().weakest();
        PressureDifference shift = PressureDifference.ofSi(given.place().valveToVesselPascals());
        GaugePressure setting = given.reliefSetting();
        if (setting != null && shift.si() == 0 && weakest == null) {
            steps.add(finalByRule(setting, Term.of("p_f", numbers.finalAbsolute())));
        } else {
            addFinalByPlace(setting, shift, weakest);
        }
    }

    private void addFinalByPlace(
            @Nullable GaugePressure setting, PressureDifference shift, VesselPlace.@Nullable WeakestPart weakest) {
        List<Term> terms = new ArrayList<>();
        List<String> limits = new ArrayList<>();
        if (setting != null) {
            double pascals =
                    finalRule().pascals(setting.si(), numbers.ambientPressure().si());
            Term atValve = Term.of("p_valve", AbsolutePressure.ofSi(pascals));
            steps.add(finalByRule(setting, atValve));
            terms.addAll(List.of(atValve, Term.of("d_valve", shift)));
            limits.add("p_valve + d_valve");
        }
        if (weakest != null) {
            GaugePressure limit = GaugePressure.ofSi(PressureArithmetic.weakestLimit(given.place()));
            terms.addAll(List.of(Term.of("p_weak", limit), Term.of("p_a", numbers.ambientPressure())));
            limits.add("p_weak + p_a");
        }
        String formula = limits.size() == 1 ? limits.get(0) : "min(" + String.join(", ", limits) + ")";
        steps.add(new Step(
                "final pressure at the vessel: what valve and weakest part allow, by height and pump",
                formula,
                terms,
                Term.of("p_f", numbers.finalAbsolute()),
                PLACE));
    }

    private FinalPressureRule finalRule() {
        return given.finalRule(numbers.method.finalPressure());
    }

    private Step finalByRule(GaugePressure setting, Term result) {
        return finalRule().step(setting, numbers.ambientPressure(), result);
    }

    private void addCharge() {
        GaugePressure stated = given.preCharge();
        if (stated == null) {
            steps.add(numbers.method
                    .charge(numbers.job.vessel().kind())
                    .step(numbers.coldAbsolute(), numbers.ambientPressure(), numbers.chargeAbsolute()));
        } else {
            addAbsolute("gas charge", "p_0", stated, numbers.chargeAbsolute());
        }
    }

    private void addAbsolute(String meaning, String symbol, GaugePressure stated, AbsolutePressure absolute) {
        steps.add(new Step(
                meaning + ", given as gauge",
                "p_gauge + p_a",
                List.of(Term.of("p_gauge", stated), Term.of("p_a", numbers.ambientPressure())),
                Term.of(symbol, absolute),
                Source.given()));
    }
}
