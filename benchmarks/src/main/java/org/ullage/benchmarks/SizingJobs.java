package org.ullage.benchmarks;

import java.util.SplittableRandom;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** Jobs that differ from call to call, so that nothing can be folded; the same numbers as types and as bare SI arrays. */
@State(Scope.Thread)
public class SizingJobs {

    static final int COUNT = 1024;
    private static final long SEED = 20_261_125;

    final double[] contents = new double[COUNT];
    final double[] cold = new double[COUNT];
    final double[] hot = new double[COUNT];
    final double[] coldPressure = new double[COUNT];
    final double[] finalPressure = new double[COUNT];
    final SizingJob[] jobs = new SizingJob[COUNT];
    private int next;

    /** Draws the jobs. */
    public SizingJobs() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < COUNT; i++) {
            contents[i] = random.nextDouble(0.1, 20);
            cold[i] = random.nextDouble(278, 293);
            hot[i] = random.nextDouble(330, 368);
            coldPressure[i] = random.nextDouble(0.5e5, 1.5e5);
            finalPressure[i] = random.nextDouble(2e5, 5e5);
            jobs[i] = job(i);
        }
    }

    private SizingJob job(int i) {
        PressureInputs pressures = PressureInputs.NONE
                .withAtmosphere(AbsolutePressure.STANDARD_ATMOSPHERE)
                .withColdPressure(GaugePressure.ofSi(coldPressure[i]))
                .withFinalPressure(GaugePressure.ofSi(finalPressure[i]));
        return new SizingJob(
                Loop.withContents(Volume.ofSi(contents[i])).steel().filledWith(Water.IAPWS_IF97),
                VesselType.bladder(),
                LoopTemperatures.between(Temperature.ofSi(cold[i]), Temperature.ofSi(hot[i])),
                pressures);
    }

    int next() {
        next = (next + 1) & (COUNT - 1);
        return next;
    }
}
