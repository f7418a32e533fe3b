package org.ullage.method;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** Jobs for the tests of this package. */
public final class Jobs {

    /** 10 m of static head and a 3 bar relief valve. */
    public static final PressureInputs HOUSE_BLOCK =
            PressureInputs.NONE.withStaticHead(Length.metres(10)).withReliefSetting(GaugePressure.bar(3));

    private Jobs() {}

    /** The methods for loops that do not boil; those for solar loops need what the collectors hold and have tests of their own. */
    public static List<Method> methods() {
        return Methods.all().stream()
                .filter(method -> method.vapour().equals(VapourAllowance.NONE))
                .toList();
    }

    public static SizingJob steel(LoopFluid fluid, VesselType vessel, @Nullable Temperature cold, Temperature hot) {
        return new SizingJob(loop(fluid), vessel, LoopTemperatures.between(cold, hot), HOUSE_BLOCK);
    }

    public static SizingJob with(SizingJob job, PressureInputs pressures) {
        return new SizingJob(job.loop(), job.vessel(), job.temperatures(), pressures);
    }

    public static Loop loop(LoopFluid fluid) {
        return Loop.withContents(Volume.litres(1000)).steel().filledWith(fluid);
    }
}
