package org.ullage.fuzz;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ullage.charge.ChargeJob;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeChoice;
import org.ullage.charge.GaugeClasses;
import org.ullage.charge.VesselAcceptance;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.diagnosis.MeasuredCharge;
import org.ullage.diagnosis.Sign;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingTolerances;
import org.ullage.operation.Reading;
import org.ullage.operation.ReliefOutlook;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.Area;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.selection.Catalogue;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.Objective;
import org.ullage.selection.SelectionJob;
import org.ullage.selection.SelectionResult;
import org.ullage.uncertainty.SizingUncertainty;
import org.ullage.uncertainty.Uncertain;
import org.ullage.vessel.VesselKind;

/** What follows a sizing: the choice, the charge, the curve, the valve, the diagnosis, and how sure the answer is. */
final class LoopInUseTarget implements Target {

    @Override
    public String name() {
        return "in-use";
    }

    @Override
    public double share() {
        return 0.006;
    }

    @Override
    public Object ask(Draw draw) {
        Method method = Pool.method(draw);
        Sizing sizing = method.size(Pool.job(method, draw));
        Volume nominal = sizing.requiredVolume().times(draw.number(0.6, 2));
        int kind = draw.below(100);
        if (kind < 25) {
            return charge(sizing, nominal, draw);
        } else if (kind < 60) {
            return curve(sizing, nominal, draw);
        } else if (kind < 70) {
            return diagnosis(sizing, nominal, draw);
        } else if (kind < 90) {
            return choice(sizing, draw);
        }
        return uncertainty(sizing, draw);
    }

    private static Object charge(Sizing sizing, Volume nominal, Draw draw) {
        ChargeJob job = ChargeJob.of(sizing, nominal, Values.celsius(draw, 0, 30), Values.celsius(draw, 5, 30));
        job = draw.chance(0.3) ? job.filledTo(Values.bar(draw, 0.8, 2)) : job;
        job = draw.chance(0.3) ? job.gaugeAbove(Length.metres(draw.number(-2, 5))) : job;
        job = draw.chance(0.5) ? job.found(Values.bar(draw, 0, 3), Values.celsius(draw, 0, 40)) : job;
        job = draw.chance(0.2) ? job.chargedUnder(Pool.air(draw)) : job;
        GaugeChoice choice = GaugeChoice.of(
                        Gauge.of(GaugePressure.bar(0), Values.bar(draw, 4, 10), draw.of(GaugeClasses.all())),
                        job.plan().toSet().pressure(),
                        job.plan().hotPressure(),
                        sizing.atmosphere())
                .forVessel(VesselAcceptance.of(sizing, nominal));
        return draw.chance(0.1)
                ? List.of(job.plan(), choice)
                : List.of(job.plan().text(UnitSystem.SI), choice.text(UnitSystem.IP));
    }

    private static Temperature required(String name, Temperature temperature) {
        if (temperature == null) {
            throw new Refused("no " + name + " temperature was drawn");
        }
        return temperature;
    }

    private static GaugePressure setting(Sizing sizing, Draw draw) {
        GaugePressure given = sizing.job().pressures().reliefSetting();
        return given == null ? Values.bar(draw, 3, 6) : given;
    }

    private static OperatingCurve operating(Sizing sizing, Volume nominal, Draw draw) {
        List<InstalledVessel> vessels = new ArrayList<>();
        int count = 1 + draw.below(3);
        for (int i = 0; i < count; i++) {
            InstalledVessel vessel = InstalledVessel.of(
                    "V" + i,
                    nominal.times(1.0 / count),
                    draw.chance(0.7) ? sizing.preCharge() : Values.bar(draw, 0.2, 2));
            vessel = draw.chance(0.2)
                    ? vessel.withAcceptanceLimit(vessel.nominal().times(draw.number(0.2, 0.8)))
                    : vessel;
            vessel = draw.chance(0.2) ? vessel.standing(Length.metres(draw.number(-5, 10))) : vessel;
            vessel = draw.chance(0.1) ? vessel.withGasLeft(VolumeFraction.ofSi(draw.number(0.1, 1))) : vessel;
            vessels.add(vessel);
        }
        Temperature fill = required("cold", sizing.job().temperatures().cold());
        Reading filled = new Reading(sizing.coldPressure().plus(PressureDifference.bar(draw.number(0, 0.3))), fill);
        return LoopInUse.of(sizing.job().loop(), new VesselBank(vessels, sizing.atmosphere()), filled)
                .curve();
    }

    private static Object curve(Sizing sizing, Volume nominal, Draw draw) {
        OperatingCurve curve = operating(sizing, nominal, draw);
        Temperature cold = required("cold", sizing.job().temperatures().cold());
        Temperature hot = required("hot", sizing.job().temperatures().hot());
        Temperature at = Temperature.ofSi(draw.number(cold.si(), hot.si()));
        Finite.check("pressure", curve.pressureSi(at.si()));
        if (draw.chance(0.2)) {
            ReliefOutlook outlook = new ReliefOutlook(
                    curve, ReliefValve.iso4126(setting(sizing, draw)), Length.metres(draw.number(-3, 3)));
            return List.of(outlook.text(UnitSystem.SI), outlook.margin(at), outlook.acceptanceLeft(at));
        }
        if (draw.chance(0.1)) {
            OperatingTolerances tolerances = new OperatingTolerances(
                    VolumeFraction.ofSi(draw.number(0, 0.3)),
                    PressureDifference.bar(draw.number(0, 0.2)),
                    PressureDifference.bar(draw.number(0, 0.2)));
            return OperatingBand.around(curve, tolerances).text(cold, hot, draw.of(UnitSystem.values()));
        }
        if (draw.chance(0.05)) {
            return List.of(curve.workings(at), curve.sample(cold, hot, 1 + draw.below(20)));
        }
        return draw.chance(0.1) ? curve : curve.at(at);
    }

    private static Object diagnosis(Sizing sizing, Volume nominal, Draw draw) {
        Temperature cold = required("cold", sizing.job().temperatures().cold());
        Temperature hot = required("hot", sizing.job().temperatures().hot());
        InstalledSystem system = new InstalledSystem(
                sizing.job().loop(),
                sizing.job().loop().contents().times(draw.number(0.01, 0.3)),
                nominal,
                sizing.preCharge(),
                sizing.coldPressure(),
                sizing.coldPressure().plus(PressureDifference.bar(draw.number(0, 0.5))),
                cold,
                ReliefValve.iso4126(setting(sizing, draw)),
                cold,
                hot,
                sizing.atmosphere());
        Evidence evidence = Evidence.of(reading(cold, 0, draw), reading(hot, 1.5, draw));
        while (draw.chance(0.5)) {
            evidence = evidence.with(draw.of(Sign.values()));
        }
        evidence = draw.chance(0.3)
                ? evidence.with(new MeasuredCharge(
                        Values.bar(draw, 0, 2),
                        Values.celsius(draw, 5, 30),
                        PressureDifference.bar(draw.number(0.02, 0.2))))
                : evidence;
        return Diagnosis.of(system, evidence);
    }

    private static GaugeReading reading(Temperature near, double raise, Draw draw) {
        return GaugeReading.of(
                Values.bar(draw, 0.5 + raise, 2 + raise),
                PressureDifference.bar(draw.number(0.02, 0.2)),
                near.plus(TemperatureDifference.kelvins(draw.number(-3, 3))),
                TemperatureDifference.kelvins(draw.number(0.5, 3)));
    }

    private static Object choice(Sizing sizing, Draw draw) {
        List<CatalogueItem> items = new ArrayList<>();
        int count = 1 + draw.below(9);
        for (int i = 0; i < count; i++) {
            items.add(item("I" + i, sizing, draw));
        }
        SelectionJob job = SelectionJob.of(sizing).atMost((int) draw.number(1, 6));
        job = draw.chance(0.2) ? job.sameSizeOnly() : job;
        job = draw.chance(0.2) ? job.within(Values.of(Area.class, draw)) : job;
        job = draw.chance(0.2) ? job.noTallerThan(Length.metres(draw.number(0.5, 3))) : job;
        SelectionResult result =
                Catalogue.of(items).choose(job.by(draw.of(Objective.values()), draw.of(Objective.values())));
        return draw.chance(0.1) ? result : List.of(result.text(UnitSystem.SI), result.excluded());
    }

    private static CatalogueItem item(String id, Sizing sizing, Draw draw) {
        Volume nominal = sizing.requiredVolume().times(draw.number(0.2, 2));
        VesselKind kind = draw.chance(0.8) ? sizing.job().vessel().kind() : draw.of(VesselKind.values());
        var item = CatalogueItem.named(id, kind)
                .nominal(nominal)
                .maximum(Values.bar(draw, 4, 12), Values.celsius(draw, 70, 130))
                .emptyMass(Mass.kilograms(draw.number(3, 200)))
                .upright(Length.metres(draw.number(0.2, 1.5)), Length.metres(draw.number(0.3, 2.5)))
                .connection("R 1")
                .price(BigDecimal.valueOf(draw.below(100_000), 2));
        item = draw.chance(0.4) ? item.acceptanceLimit(nominal.times(draw.number(0.3, 0.9))) : item;
        return (draw.chance(0.4) ? item.stock((int) draw.number(1, 9)) : item).build();
    }

    private static Object uncertainty(Sizing sizing, Draw draw) {
        SizingUncertainty question = SizingUncertainty.of(sizing.method(), sizing.job());
        Volume contents = sizing.job().loop().contents();
        question = question.contents(
                draw.chance(0.5)
                        ? Uncertain.normal(contents, contents.times(draw.number(0.01, 0.1)))
                        : Uncertain.uniform(contents.times(draw.number(0.8, 1)), contents.times(draw.number(1, 1.2))));
        Temperature hot = sizing.job().temperatures().hot();
        question = hot != null && draw.chance(0.3)
                ? question.hotTemperature(Uncertain.normal(hot, TemperatureDifference.kelvins(draw.number(0.2, 3))))
                : question;
        int draws = 2 + draw.below(200);
        int kind = draw.below(3);
        if (kind == 0) {
            return question.linear();
        }
        return kind == 1
                ? question.sampled(draws, draw.bits())
                : question.liftChance(sizing.requiredVolume().times(draw.number(0.9, 1.5)), draws, draw.bits());
    }
}
