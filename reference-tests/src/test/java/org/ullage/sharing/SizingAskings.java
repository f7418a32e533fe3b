package org.ullage.sharing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.ullage.comparison.ConventionShares;
import org.ullage.comparison.Explanation;
import org.ullage.comparison.MethodComparison;
import org.ullage.comparison.VesselByFluid;
import org.ullage.fluids.Fluids;
import org.ullage.loop.EmitterType;
import org.ullage.loop.PipeStandard;
import org.ullage.loop.QuickEstimate;
import org.ullage.loop.TakeOff;
import org.ullage.loop.TakeOffRow;
import org.ullage.method.Method;
import org.ullage.method.SizingFunction;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.method.VariedJob;
import org.ullage.published.Methods;
import org.ullage.quantity.Length;
import org.ullage.quantity.Power;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.sizing.SizingBatch;
import org.ullage.sizing.SizingSweep;
import org.ullage.sizing.SweepAxis;

/** From the contents of a loop to the required volume, and why methods differ. */
final class SizingAskings {

    private SizingAskings() {}

    static List<Asking> contents() {
        TakeOff takeOff = TakeOff.start()
                .pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(120))
                .item("boiler", Volume.litres(18), 1);
        QuickEstimate estimate = QuickEstimate.of(Power.kilowatts(60), EmitterType.STEEL_PANEL_RADIATORS);
        return List.of(
                new Asking("row of a take-off", () -> new TakeOffRow(Map.of("item", "boiler", "volume", "18 L"))),
                new Asking("take-off", () -> takeOff),
                new Asking("contents of the take-off", takeOff::contents),
                new Asking("estimate", () -> estimate),
                new Asking("contents of the estimate", estimate::contents),
                new Asking("text of the estimate", () -> estimate.contents().text(UnitSystem.IP)));
    }

    /** Every method on every job; a refusal is an answer too. */
    static List<Asking> methods() {
        List<Asking> askings = new ArrayList<>();
        List<SizingJob> jobs =
                List.of(QuillbrookYard.RADIATORS, QuillbrookYard.SNOW_MELTING, QuillbrookYard.GLASSHOUSE);
        for (Method method : Methods.all()) {
            askings.add(new Asking(method.name(), () -> method));
            for (SizingJob job : jobs) {
                askings.add(new Asking(
                        method.name() + " on " + job.vessel().kind().word(), () -> sizedOrRefused(method, job)));
            }
        }
        askings.add(new Asking("workings", () -> QuillbrookYard.SIZING.workings()));
        VariedJob varied =
                new VariedJob(QuillbrookYard.RADIATORS, EnumSet.of(SizingInput.RELIEF_SETTING, SizingInput.CONTENTS));
        askings.add(new Asking("varied job", () -> varied));
        askings.add(new Asking("function of numbers", () -> SizingFunction.of(Methods.EN_12828, varied)));
        askings.add(new Asking(
                "function along the tangent",
                () -> SizingFunction.around(Methods.EN_12828, varied, QuillbrookYard.RADIATORS)));
        SizingBatch batch = SizingBatch.of(Methods.EN_12828, QuillbrookYard.RADIATORS)
                .varying(SizingInput.CONTENTS, new double[] {1, 2, -1});
        askings.add(new Asking("batch", () -> batch));
        askings.add(new Asking("volumes of the batch", () -> (Serializable) volumes(batch)));
        askings.add(new Asking("sweep", SizingAskings::sweep));
        return askings;
    }

    /** Contents down, the fluid across. */
    static SizingSweep sweep() {
        return SizingSweep.of(
                Methods.EN_12828,
                QuillbrookYard.RADIATORS,
                SweepAxis.contents(List.of(Volume.litres(900), Volume.litres(1500))),
                SweepAxis.fluids(Fluids.waterModels()));
    }

    private static List<Double> volumes(SizingBatch batch) {
        double[] volumes = new double[batch.rows()];
        batch.requiredVolumes(volumes);
        return Arrays.stream(volumes).boxed().toList();
    }

    private static Serializable sizedOrRefused(Method method, SizingJob job) {
        try {
            return method.size(job);
        } catch (IllegalArgumentException refusal) {
            return refusal.getClass().getName() + ": " + refusal.getMessage();
        }
    }

    static List<Asking> comparison() {
        SizingJob job = QuillbrookYard.RADIATORS;
        return List.of(
                new Asking("comparison", () -> MethodComparison.of(job)),
                new Asking(
                        "text of the comparison", () -> MethodComparison.of(job).text(UnitSystem.SI)),
                new Asking("explanation", () -> Explanation.between(job, Methods.ASHRAE, Methods.EN_12828)),
                new Asking("shares", () -> ConventionShares.between(job, Methods.ASHRAE, Methods.EN_12828)),
                new Asking("vessels by fluid", () -> VesselByFluid.of(job, Methods.EN_12828, Fluids.waterModels())));
    }
}
