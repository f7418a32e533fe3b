package org.ullage.fuzz;

import java.util.ArrayList;
import java.util.List;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.Glycol;
import org.ullage.fluids.GlycolModel;
import org.ullage.fluids.GlycolSolution;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.pressure.VesselPlace;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** Fluids, loops and sizing jobs. */
final class Pool {

    private static final List<LoopFluid> FLUIDS = fluids();

    private Pool() {}

    /** Every model of water and, in steps of concentration, of both glycols. */
    private static List<LoopFluid> fluids() {
        List<LoopFluid> fluids = new ArrayList<>(Fluids.waterModels());
        for (Glycol glycol : Glycol.values()) {
            for (int percent = 10; percent <= 60; percent += 5) {
                fluids.addAll(glycol.models(VolumeFraction.percent(percent)));
            }
        }
        return fluids;
    }

    static LoopFluid fluid(Draw draw) {
        double kind = draw.between(0, 1);
        if (kind < 0.4) {
            return draw.of(Fluids.waterModels());
        }
        return kind < 0.9 ? draw.of(FLUIDS) : glycol(draw);
    }

    /** A glycol of any concentration, refused where no model has it. */
    static GlycolSolution glycol(Draw draw) {
        Glycol glycol = draw.of(Glycol.values());
        double fraction = draw.number(0, 1);
        if (draw.chance(0.3)) {
            return draw.chance(0.5) ? glycol.of(VolumeFraction.ofSi(fraction)) : glycol.of(MassFraction.ofSi(fraction));
        }
        GlycolModel model = draw.of(GlycolModel.values());
        return draw.chance(0.5)
                ? glycol.by(model, VolumeFraction.ofSi(fraction))
                : glycol.by(model, MassFraction.ofSi(fraction));
    }

    static Loop loop(Draw draw) {
        PipeMaterial pipe = draw.of(PipeMaterial.STEEL, PipeMaterial.COPPER, PipeMaterial.RIGID);
        Loop.PipeStep contents = Loop.withContents(Values.volume(draw));
        Loop loop = (draw.chance(0.1) ? contents.pipeNotStated() : contents.pipe(pipe)).filledWith(fluid(draw));
        if (draw.chance(0.2)) {
            return loop.stagnating(new StagnationContents(
                    loop.contents().times(draw.number(0, 0.3)), loop.contents().times(draw.number(0, 0.2))));
        }
        return loop;
    }

    private static LoopTemperatures temperatures(Draw draw) {
        Temperature cold = draw.chance(0.04) ? null : Values.celsius(draw, 2, 25);
        Temperature hot = draw.chance(0.04) ? null : Values.celsius(draw, 35, 110);
        LoopTemperatures range = LoopTemperatures.between(cold, hot);
        range = draw.chance(0.3) ? range.withMean(Values.celsius(draw, 30, 80)) : range;
        return draw.chance(0.3) ? range.withSafety(Values.celsius(draw, 90, 120)) : range;
    }

    private static PressureInputs pressures(Draw draw) {
        PressureInputs inputs = PressureInputs.NONE;
        if (draw.chance(0.5)) {
            inputs = inputs.withStaticHead(Length.metres(draw.number(0, 15)));
        } else if (draw.chance(0.95)) {
            inputs = inputs.withColdPressure(Values.bar(draw, 0.5, 2));
        }
        if (draw.chance(0.5)) {
            inputs = inputs.withReliefSetting(Values.bar(draw, 2.5, 6));
        } else if (draw.chance(0.95)) {
            inputs = inputs.withFinalPressure(Values.bar(draw, 2.2, 6));
        }
        inputs = draw.chance(0.15) ? inputs.withPreCharge(Values.bar(draw, 0.2, 1.5)) : inputs;
        inputs = draw.chance(0.2) ? inputs.withAtmosphere(air(draw)) : inputs;
        inputs = draw.chance(0.1) ? inputs.withReliefMargin(PressureDifference.bar(draw.number(0, 0.7))) : inputs;
        return draw.chance(0.1)
                ? inputs.withPlace(VesselPlace.AT_VALVE
                        .withValveAbove(Length.metres(draw.number(-5, 5)))
                        .withPumpAtTop(PressureDifference.bar(draw.number(-0.3, 0.3))))
                : inputs;
    }

    static AbsolutePressure air(Draw draw) {
        return draw.chance(0.5)
                ? StandardAtmosphere.at(Length.metres(draw.number(-100, 3_000)))
                : AbsolutePressure.ofSi(draw.number(6e4, 1.1e5));
    }

    static VesselType vessel(VesselKind kind, Draw draw) {
        return kind == VesselKind.DIAPHRAGM && draw.chance(0.5)
                ? VesselType.diaphragm(VolumeFraction.ofSi(draw.number(0.2, 0.7)))
                : VesselType.of(kind);
    }

    static Method method(Draw draw) {
        return draw.of(Methods.all());
    }

    /** A job for a method: its own kinds of vessel as a rule, and what a stagnating loop needs. */
    static SizingJob job(Method method, Draw draw) {
        VesselKind kind = draw.chance(0.1) ? draw.of(VesselKind.values()) : draw.of(List.copyOf(method.kinds()));
        return new SizingJob(loop(draw), vessel(kind, draw), temperatures(draw), pressures(draw));
    }
}
