package org.ullage.method;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.StagnationContents;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Puts the numbers of one sizing into steps. */
final class SizingWorkings {

    private static final Source BALANCE = Source.computed("volume balance", "sum of the parts");

    private final SizingNumbers numbers;
    private final Method method;
    private final SizingJob job;
    private final List<Step> steps = new ArrayList<>();

    private SizingWorkings(SizingNumbers numbers) {
        this.numbers = numbers;
        this.method = numbers.method;
        this.job = numbers.job;
    }

    static Workings of(SizingNumbers numbers) {
        SizingWorkings workings = new SizingWorkings(numbers);
        workings.addContents();
        workings.addHot();
        workings.addAtmosphere();
        boolean open = numbers.job.vessel().kind() == VesselKind.OPEN;
        if (!open) {
            workings.steps.addAll(PressureWorkings.of(numbers));
        }
        workings.addExpansion();
        workings.addWater();
        if (open) {
            workings.addOpenTank();
        } else {
            workings.addClosedVessel();
        }
        return new Workings(
                "Expansion vessel (" + numbers.job.vessel().kind().word() + ") by " + numbers.method.title(),
                workings.steps);
    }

    private void given(String meaning, Term value) {
        steps.add(Step.given(meaning, value, "given", Source.given()));
    }

    private void addContents() {
        given(
                "contents of the loop without the vessel",
                Term.of("V_s", job.loop().contents()));
    }

    private void addHot() {
        if (method.hotBasis().of(job.temperatures()) == null) {
            return;
        }
        steps.add(Step.given(
                method.hotBasis().toString(), Term.of("t_hot", numbers.states.hot()), "given", Source.given()));
    }

    private void addAtmosphere() {
        AbsolutePressure site = job.pressures().atmosphere();
        if (site == null) {
            steps.add(method.atmosphere().step());
        } else {
            given("pressure of the air", Term.of("p_a", site));
        }
    }

    private void addExpansion() {
        steps.addAll(method.expansion().steps(job.loop().fluid(), numbers.states, numbers.expansionFraction));
        PipeMaterial pipe = job.loop().pipe();
        if (method.pipeCredit() == PipeCredit.SUBTRACTED && pipe != null) {
            steps.add(new Step(
                    "pipe credit for " + pipe.name() + ", as a share of the contents",
                    "3 * alpha * dt",
                    List.of(
                            Term.of("alpha", pipe.linearExpansion()),
                            Term.of("dt", TemperatureDifference.ofSi(numbers.states.rise()))),
                    creditTerm(),
                    method.pipeCredit().source()));
        } else {
            steps.add(Step.given(
                    "pipe credit, as a share of the contents",
                    creditTerm(),
                    method.pipeCredit() == PipeCredit.SUBTRACTED
                            ? "pipe material not given"
                            : method.pipeCredit().toString(),
                    method.pipeCredit().source()));
        }
    }

    private Term creditTerm() {
        return Term.number("c", numbers.creditFraction);
    }

    private void addWater() {
        Volume expansion = Volume.ofSi(numbers.expansion);
        Volume contents = job.loop().contents();
        steps.add(new Step(
                "net expansion of the loop",
                "V_s * (e - c)",
                List.of(Term.of("V_s", contents), Term.number("e", numbers.expansionFraction), creditTerm()),
                Term.of("V_e", expansion),
                BALANCE));
        Volume reserve = Volume.ofSi(numbers.reserve);
        steps.add(method.reserve().step(contents, expansion, numbers.volumePerWater(), reserve));
        List<Term> parts = new ArrayList<>(List.of(Term.of("V_e", expansion), Term.of("V_wr", reserve)));
        StagnationContents boiling = job.loop().stagnation();
        String sum = "V_e + V_wr";
        if (boiling != null && method.vapour().isForBoilingLoops()) {
            Volume vapour = Volume.ofSi(numbers.vapour);
            steps.add(method.vapour().step(boiling, vapour));
            parts.add(Term.of("V_vap", vapour));
            sum += " + V_vap";
        }
        steps.add(new Step(
                "water the vessel must take (acceptance volume)", sum, parts, Term.of("V_x", water()), BALANCE));
    }

    private Volume water() {
        return Volume.ofSi(numbers.water());
    }

    private void addOpenTank() {
        Constant allowance = method.openAllowance();
        if (allowance != null) {
            steps.add(new Step(
                    "required volume of the open tank",
                    "V_x * " + allowance.symbol(),
                    List.of(Term.of("V_x", water()), Term.of(allowance)),
                    Term.of("V_n", Volume.ofSi(water().si() * numbers.volumePerWater())),
                    allowance.source()));
        }
    }

    private void addClosedVessel() {
        Term water = Term.of("V_x", water());
        Term charge = Term.of("p_0", numbers.chargeAbsolute());
        Term cold = Term.of("p_i", numbers.coldAbsolute());
        Term gas = Term.of("V_gas", Volume.ofSi(water().si() * numbers.gasVolumePerWater));
        steps.add(gasStep(List.of(water, charge, cold, Term.of("p_f", numbers.finalAbsolute())), gas));
        VolumeFraction limit = job.vessel().acceptanceLimit();
        if (limit == null) {
            steps.add(new Step(
                    "required nominal volume (acceptance limit not known)",
                    "V_gas",
                    List.of(gas),
                    Term.of("V_n", Volume.ofSi(gas.number())),
                    GasLaw.SOURCE));
            return;
        }
        Term accepted = Term.of("V_acc", Volume.ofSi(water().si() * numbers.limitVolumePerWater));
        steps.add(new Step(
                "nominal volume by the acceptance limit",
                method.gasTemperatures().isIsothermal()
                        ? "V_x / (a - (1 - p_0 / p_i))"
                        : "V_x / (a - (1 - p_0 * g_i / p_i))",
                List.of(
                        water,
                        Term.of("a", limit),
                        charge,
                        cold,
                        Term.number("g_i", method.gasTemperatures().coldRatio())),
                accepted,
                GasLaw.SOURCE));
        steps.add(new Step(
                "required nominal volume: the larger governs",
                "max(V_gas, V_acc)",
                List.of(gas, accepted),
                Term.of("V_n", Volume.ofSi(Math.max(gas.number(), accepted.number()))),
                GasLaw.SOURCE));
    }

    private Step gasStep(List<Term> ordinary, Term gas) {
        List<Term> terms = new ArrayList<>(ordinary);
        String shares = "p_0 / p_i - p_0 / p_f";
        GasTemperatures temperatures = method.gasTemperatures();
        if (!temperatures.isIsothermal()) {
            terms.add(Term.number("g_i", temperatures.coldRatio()));
            terms.add(Term.number("g_f", temperatures.hotRatio()));
            shares = "p_0 * g_i / p_i - p_0 * g_f / p_f";
        }
        Constant least = method.leastVolumePerWater();
        if (least != null) {
            terms.add(Term.of(least));
        }
        return new Step(
                "nominal volume by the gas law",
                least == null ? "V_x / (" + shares + ")" : "V_x * max(1 / (" + shares + "), " + least.symbol() + ")",
                terms,
                gas,
                least == null ? GasLaw.SOURCE : least.source());
    }
}
