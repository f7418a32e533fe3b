package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Iapws97;
import org.ullage.method.SizingInput;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.sizing.SizingBatch;

/** Columns of ASHRAE sizings with water by IAPWS-IF97 at both temperatures, per row: against a loop of the same arithmetic. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(SizingJobs.COUNT)
public class BatchBenchmark {

    private static final double AIR = AbsolutePressure.STANDARD_ATMOSPHERE.si();
    private static final double STEEL = 11.7e-6;

    private final double[] volumes = new double[SizingJobs.COUNT];
    private final SizingJobs inputs = new SizingJobs();
    private final SizingBatch batch = SizingBatch.of(Methods.ASHRAE, inputs.jobs[0])
            .varying(SizingInput.CONTENTS, inputs.contents)
            .varying(SizingInput.COLD_TEMPERATURE, inputs.cold)
            .varying(SizingInput.HOT_TEMPERATURE, inputs.hot)
            .varying(SizingInput.COLD_PRESSURE, inputs.coldPressure)
            .varying(SizingInput.FINAL_PRESSURE, inputs.finalPressure);

    /**
     * The yardstick: bare arithmetic on arrays, no checks.
     *
     * @return the volumes
     */
    @Benchmark
    public double[] inLine() {
        for (int i = 0; i < volumes.length; i++) {
            double cold = inputs.coldPressure[i] + AIR;
            double last = inputs.finalPressure[i] + AIR;
            double t1 = inputs.cold[i];
            double t2 = inputs.hot[i];
            double expansion = Iapws97.specificVolume(t2, last) / Iapws97.specificVolume(t1, cold) - 1;
            volumes[i] = inputs.contents[i] * (expansion - 3 * STEEL * (t2 - t1)) / (1 - cold / last);
        }
        return volumes;
    }

    /**
     * The library, all checks included.
     *
     * @return how many rows were refused
     */
    @Benchmark
    public int batch() {
        return batch.requiredVolumes(volumes);
    }
}
