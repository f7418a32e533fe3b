package org.ullage.charge;

import java.util.ArrayList;
import java.util.List;
import org.ullage.method.Sizing;
import org.ullage.pressure.StaticHead;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Units;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Puts the numbers of a charge plan into steps. */
final class ChargeWorkings {

    private static final Source GAUGE =
            Source.computed("hydrostatic law", "pressure at the vessel less air and column");
    private static final Source BALANCE = Source.computed("volume balance", "sum of the parts");

    private final ChargePlan plan;
    private final ChargeNumbers numbers;
    private final Sizing sizing;
    private final List<Step> steps = new ArrayList<>();

    private final Term nominal;
    private final Term charge;
    private final Term fillCharge;
    private final Term hotCharge;
    private final Term contraction;
    private final Term expansion;

    private ChargeWorkings(ChargePlan plan, ChargeNumbers numbers) {
        this.plan = plan;
        this.numbers = numbers;
        this.sizing = numbers.job.sizing();
        this.nominal = Term.of("V_n", numbers.job.nominal());
        this.charge = Term.of("P_0", numbers.wanted.absolute());
        this.fillCharge = Term.of("P_d", numbers.fillCharge);
        this.hotCharge = Term.of("P_h", numbers.hotCharge);
        this.contraction = Term.of("V_c", numbers.window.contraction());
        this.expansion = Term.of("V_e", numbers.window.expansion());
    }

    static Workings of(ChargePlan plan, ChargeNumbers numbers) {
        ChargeWorkings workings = new ChargeWorkings(plan, numbers);
        workings.addCharge();
        workings.addFill();
        workings.addHot();
        workings.addGauge("gauge reading after filling", "P_fill", numbers.fill, "p_fill", plan.gaugeAfterFilling());
        workings.addGauge("gauge reading with the loop hot", "P_hot", numbers.hot, "p_hot", plan.gaugeWhenHot());
        plan.found().ifPresent(workings::addFound);
        return new Workings("Charge and fill of an expansion vessel", workings.steps);
    }

    private void addCharge() {
        steps.add(new ChargeAtTemperature(plan.wanted(), plan.toSet()).step("p_0", "T_0", "p_d", "T_d"));
        steps.add(new Step(
                "charge that is wanted, counted from vacuum",
                "p_0 + p_a",
                List.of(Term.of("p_0", plan.wanted().pressure()), Term.of("p_a", sizing.atmosphere())),
                charge,
                ChargeReading.SOURCE));
        GasTemperatures gas = sizing.method().gasTemperatures();
        steps.add(warmed("with the gas as warm as the air at the filling", "T_d", numbers.toSet, fillCharge));
        steps.add(warmed(
                "with the gas as warm as the method has it with the loop hot",
                "T_h",
                plan.wanted().at(gas.hot()),
                hotCharge));
    }

    private Step warmed(String when, String symbol, ChargeReading reading, Term result) {
        return new Step(
                "charge " + when,
                "P_0 * " + symbol + " / T_0",
                List.of(
                        charge,
                        Term.in(Units.KELVIN, symbol, reading.gas()),
                        Term.in(Units.KELVIN, "T_0", plan.wanted().gas())),
                result,
                ChargeReading.SOURCE);
    }

    private void addFill() {
        Source fluid = sizing.job().loop().fluid().source();
        steps.add(Step.given("water the loop takes out until it is coldest", contraction, "by the fluid", fluid));
        steps.add(Step.given("water the loop gives off until it is hottest", expansion, "by the fluid", fluid));
        Term reserve = Term.of("V_wr", sizing.reserveVolume());
        steps.add(new Step(
                "lowest fill pressure, keeps the reserve",
                "P_d * V_n / (V_n - V_wr - V_c)",
                List.of(fillCharge, nominal, reserve, contraction),
                Term.of("P_low", numbers.window.window().lowest()),
                GasLaw.SOURCE));
        steps.add(new Step(
                "highest fill pressure, takes the expansion",
                "P_d * V_n / (V_n * P_h / p_f + V_e)",
                List.of(
                        fillCharge,
                        nominal,
                        hotCharge,
                        Term.of("p_f", sizing.finalPressure().absolute(sizing.atmosphere())),
                        expansion),
                Term.of("P_high", numbers.window.window().highest()),
                GasLaw.SOURCE));
        Term fill = Term.of("P_fill", numbers.fill);
        if (numbers.job.fill() == null) {
            addWanted(reserve, fill);
        } else {
            steps.add(Step.given("fill pressure that was chosen", fill, "given", Source.given()));
        }
        steps.add(new Step(
                "water in the vessel after filling",
                "V_n * max(0, 1 - P_d / P_fill)",
                List.of(nominal, fillCharge, fill),
                Term.of("V_w", numbers.water),
                GasLaw.SOURCE));
    }

    private void addWanted(Term reserve, Term fill) {
        GasTemperatures gas = sizing.method().gasTemperatures();
        Term cold = Term.of("V_i", numbers.coldWater);
        Term hold = Term.of("V_h", numbers.toHold);
        steps.add(new Step(
                "water in the vessel at the cold pressure",
                "V_n * max(0, 1 - P_0 * g_i / p_i)",
                List.of(
                        nominal,
                        charge,
                        Term.number("g_i", gas.coldRatio()),
                        Term.of("p_i", sizing.coldPressure().absolute(sizing.atmosphere()))),
                cold,
                GasLaw.SOURCE));
        steps.add(new Step(
                "water to hold after filling, for reserve and cold pressure",
                "max(V_wr, V_i) + V_c",
                List.of(reserve, cold, contraction),
                hold,
                BALANCE));
        steps.add(new Step(
                "pressure to fill to, at the vessel",
                "P_d * V_n / (V_n - V_h)",
                List.of(fillCharge, nominal, hold),
                fill,
                GasLaw.SOURCE));
    }

    private void addHot() {
        steps.add(new Step(
                "pressure at the vessel with the loop hot",
                "P_h * V_n / (V_n - V_w - V_e)",
                List.of(hotCharge, nominal, Term.of("V_w", numbers.water), expansion),
                Term.of("P_hot", numbers.hot),
                GasLaw.SOURCE));
    }

    private void addGauge(
            String meaning, String symbol, AbsolutePressure atVessel, String result, GaugePressure reading) {
        steps.add(new Step(
                meaning,
                symbol + " - p_a - p_st",
                List.of(
                        Term.of(symbol, atVessel),
                        Term.of("p_a", sizing.atmosphere()),
                        Term.of("p_st", StaticHead.of(numbers.job.gaugeAbove()))),
                Term.of(result, reading),
                GAUGE));
    }

    private void addFound(FoundCharge found) {
        VesselAcceptance vessel = VesselAcceptance.of(sizing, numbers.job.nominal());
        steps.add(new ChargeAtTemperature(plan.wanted(), found.wanted()).step("p_0", "T_0", "p_w", "T_w"));
        steps.add(new Step(
                "gas to add, or to bleed if negative",
                "p_w - p_x",
                List.of(
                        Term.of("p_w", found.wanted().pressure()),
                        Term.of("p_x", found.found().pressure())),
                Term.of("d_p", found.correction()),
                ChargeReading.SOURCE));
        steps.add(AcceptanceStep.of(vessel, "as wanted", "P_0", plan.wanted().absolute(), "V_0"));
        AbsolutePressure asFound = found.found().at(plan.wanted().gas()).absolute();
        steps.add(AcceptanceStep.of(vessel, "as found", "P_x", asFound, "V_x"));
    }
}
