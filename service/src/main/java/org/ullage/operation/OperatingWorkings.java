package org.ullage.operation;

import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.Loop;
import org.ullage.loop.PipeMaterial;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Mass;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Derives the steps of one point of a curve on demand, from the same numbers. */
final class OperatingWorkings {

    /** Digits that let a reader redo the difference of two nearly equal masses. */
    private static final int MASS_DIGITS = 9;

    private static final Source BALANCE =
            Source.computed("conservation of mass", "what leaves the loop is in the vessels");

    private final OperatingCurve curve;
    private final LoopBalance balance;
    private final double kelvins;
    private final double pascals;

    private OperatingWorkings(OperatingCurve curve, double kelvins) {
        this.curve = curve;
        this.balance = curve.numbers().loop();
        this.kelvins = kelvins;
        this.pascals = curve.pressureSi(kelvins);
    }

    static Workings of(OperatingCurve curve, Temperature temperature) {
        OperatingWorkings point = new OperatingWorkings(curve, temperature.si());
        return new Workings(
                "Pressure at " + temperature.text(UnitSystem.SI) + "; "
                        + curve.inUse().text(UnitSystem.SI),
                point.steps());
    }

    private List<Step> steps() {
        Step room = room();
        Step inLoop = new Step(
                "liquid in the loop",
                "V_2 / v_2",
                List.of(room.result(), volume("v_2", kelvins)),
                mass("m_2", balance.loopMass(kelvins, pascals)),
                curve.inUse().loop().fluid().source());
        Term all = mass("m", balance.mass);
        Step inVessels = new Step(
                "liquid in the vessels",
                "m - m_2",
                List.of(all, inLoop.result()),
                mass("m_v", balance.mass - inLoop.result().number()),
                BALANCE);
        Step water = water(inVessels.result());
        List<Step> steps = new ArrayList<>();
        steps.add(Step.given("liquid in loop and vessels, from the fill", all, "kept", BALANCE));
        steps.add(room);
        steps.add(inLoop);
        steps.add(inVessels);
        steps.add(water);
        steps.add(pressure(water.result()));
        return steps;
    }

    private Step room() {
        Loop loop = curve.inUse().loop();
        PipeMaterial pipe = loop.pipe();
        List<Term> terms = new ArrayList<>(List.of(
                Term.of("V_s", loop.contents()),
                Term.of("alpha", LinearExpansion.perKelvin(balance.alpha)),
                Term.of("dt", TemperatureDifference.ofSi(kelvins - balance.fillKelvins))));
        String formula = "V_s * (1 + 3 * alpha * dt)";
        if (balance.stretch > 0) {
            formula += " * (1 + s)";
            terms.add(Term.number("s", balance.stretch * (pascals - balance.fillPascals)));
        }
        return new Step(
                "room in the loop" + (balance.stretch > 0 ? ", s the stretch of the pipe by the pressure" : ""),
                formula,
                terms,
                Term.of("V_2", Volume.ofSi(balance.room(kelvins, pascals)), MASS_DIGITS),
                pipe == null ? Source.commonPractice("no growth of a pipe that is not stated") : pipe.source());
    }

    private Step water(Term inVessels) {
        double own = balance.ownKelvins(kelvins);
        double kept = balance.fillWater / balance.fluid.specificVolumeSi(own, pascals);
        Term result = Term.of("V_w", Volume.ofSi(balance.demand(kelvins, pascals)));
        String meaning = "room they take there; " + curve.inUse().vesselWater().text(UnitSystem.SI);
        if (curve.inUse().vesselWater().kind() == VesselWater.Kind.ENTERS_AS_WARM_AS_LOOP
                && inVessels.number() >= kept) {
            return new Step(
                    meaning,
                    "V_1 + (m_v - V_1 / v_v) * v_2",
                    List.of(
                            Term.of("V_1", Volume.ofSi(balance.fillWater)),
                            inVessels,
                            volume("v_v", own),
                            volume("v_2", kelvins)),
                    result,
                    BALANCE);
        }
        return new Step(meaning, "m_v * v_v", List.of(inVessels, volume("v_v", own)), result, BALANCE);
    }

    private Step pressure(Term water) {
        BankNumbers bank = curve.numbers().bank();
        Term result = Term.of("p", AbsolutePressure.ofSi(pascals));
        if (!bank.isOne() || pascals >= bank.one().stops()) {
            return Step.given(
                    "absolute pressure at which vessels and loop agree on V_w",
                    result,
                    "found by a search",
                    GasLaw.SOURCE);
        }
        GasGroup vessel = bank.one();
        String formula = "p_0 / (1 - V_w / V_n)";
        List<Term> terms = new ArrayList<>(List.of(
                Term.of("p_0", AbsolutePressure.ofSi(vessel.charge())),
                water,
                Term.of("V_n", Volume.ofSi(vessel.nominal()))));
        if (vessel.head() != 0) {
            formula += " + p_h";
            terms.add(Term.of("p_h", PressureDifference.ofSi(vessel.head())));
        }
        return new Step("absolute pressure of the gas, at the reference point", formula, terms, result, GasLaw.SOURCE);
    }

    private Term volume(String symbol, double at) {
        return Term.of(symbol, SpecificVolume.ofSi(balance.fluid.specificVolumeSi(at, pascals)), MASS_DIGITS);
    }

    private static Term mass(String symbol, double kilograms) {
        return Term.of(symbol, Mass.ofSi(kilograms), MASS_DIGITS);
    }
}
