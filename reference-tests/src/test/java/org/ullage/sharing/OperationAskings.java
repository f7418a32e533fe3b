package org.ullage.sharing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.PipeMaterial;
import org.ullage.operation.FillPlan;
import org.ullage.operation.LockedLiquid;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingTolerances;
import org.ullage.operation.Reading;
import org.ullage.operation.ReadingErrors;
import org.ullage.operation.ReliefOutlook;
import org.ullage.operation.ServiceIsolation;
import org.ullage.operation.SoundVessel;
import org.ullage.operation.TwoReadings;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.selection.Catalogue;
import org.ullage.selection.SelectionJob;
import org.ullage.selection.SizedGas;

/** Vessels chosen, and the loop in use. */
final class OperationAskings {

    private static final Temperature COLD = QuillbrookYard.COLD;
    private static final Temperature HOT = QuillbrookYard.HOT;

    private OperationAskings() {}

    static List<Asking> choice() {
        Catalogue catalogue = QuillbrookYard.CATALOGUE;
        SelectionJob job = SelectionJob.of(QuillbrookYard.SIZING);
        SelectionJob small = SelectionJob.forVolumes(Volume.litres(120), null);
        SelectionJob much = SelectionJob.forVolumes(Volume.litres(1e5), null);
        SizedGas gas = SizedGas.of(QuillbrookYard.SIZING);
        return List.of(
                new Asking("catalogue", () -> catalogue),
                new Asking("choice", () -> catalogue.choose(job)),
                new Asking("text of the choice", () -> catalogue.choose(job).text(UnitSystem.SI)),
                new Asking("small choice", () -> catalogue.choose(small)),
                new Asking("runner-up", () -> catalogue.choose(small).orRefuse().runnerUp()),
                new Asking("front", () -> catalogue.choose(small).orRefuse().front()),
                new Asking("oversize", () -> catalogue.choose(small).orRefuse().oversize()),
                new Asking(
                        "next size down", () -> catalogue.choose(job).orRefuse().nextSizeDown(gas)),
                new Asking("shortage", () -> catalogue.choose(much)));
    }

    static List<Asking> curve() {
        List<Asking> askings = new ArrayList<>(List.of(
                new Asking("curve", () -> QuillbrookYard.CURVE),
                new Asking("sampled curve", () -> (Serializable) QuillbrookYard.CURVE.sample(COLD, HOT, 50)),
                new Asking("workings of the curve", () -> QuillbrookYard.CURVE.workings(HOT)),
                new Asking("roof isolated", () -> QuillbrookYard.CURVE.isolating("roof", HOT)),
                new Asking("band", OperationAskings::band),
                new Asking("text of the band", () -> band().text(COLD, HOT, UnitSystem.SI)),
                new Asking("relief outlook", OperationAskings::outlook),
                new Asking("text of the outlook", () -> outlook().text(UnitSystem.SI)),
                new Asking("lifts at", () -> outlook().liftsAt()),
                new Asking("isolation", OperationAskings::isolation),
                new Asking("text of the isolation", () -> isolation().text(UnitSystem.SI))));
        askings.addAll(readings());
        return askings;
    }

    private static OperatingBand band() {
        return OperatingBand.around(
                QuillbrookYard.CURVE,
                new OperatingTolerances(
                        VolumeFraction.percent(10), PressureDifference.bar(0.1), PressureDifference.bar(0.1)));
    }

    private static ReliefOutlook outlook() {
        return new ReliefOutlook(QuillbrookYard.CURVE, QuillbrookYard.RELIEF, Length.metres(1));
    }

    private static ServiceIsolation isolation() {
        return ServiceIsolation.of(QuillbrookYard.CURVE, "roof", Temperature.celsius(40), GaugePressure.bar(3));
    }

    private static List<Asking> readings() {
        TwoReadings readings = TwoReadings.of(
                new Reading(GaugePressure.bar(1.2), Temperature.celsius(15)),
                new Reading(GaugePressure.bar(2.1), Temperature.celsius(70)),
                new SoundVessel(Volume.litres(100), GaugePressure.bar(1), QuillbrookYard.AIR),
                QuillbrookYard.RADIATORS.loop().fluid(),
                PipeMaterial.STEEL);
        ReadingErrors errors = new ReadingErrors(
                PressureDifference.bar(0.05),
                TemperatureDifference.kelvins(1),
                PressureDifference.bar(0.05),
                Volume.litres(1));
        LockedLiquid locked = LockedLiquid.rigid(QuillbrookYard.RADIATORS.loop().fluid(), HOT, AbsolutePressure.bar(3));
        return List.of(
                new Asking("two readings", () -> readings),
                new Asking("contents by two readings", () -> readings.contents(errors)),
                new Asking("workings of two readings", readings::workings),
                new Asking("locked liquid", () -> locked),
                new Asking("text of locked liquid", () -> locked.text(UnitSystem.SI)),
                new Asking("fill plan", () -> FillPlan.of(QuillbrookYard.SIZING, Volume.litres(200), COLD)));
    }
}
