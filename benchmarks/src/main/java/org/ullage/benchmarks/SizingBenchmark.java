package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.ullage.fluids.Iapws97;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Volume;

/** One ASHRAE sizing with water by IAPWS-IF97 at both temperatures, against the same arithmetic written in line. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SizingBenchmark {

    private static final double AIR = AbsolutePressure.STANDARD_ATMOSPHERE.si();
    private static final double STEEL = 11.7e-6;

    /**
     * The yardstick: bare arithmetic, no checks, no result object.
     *
     * @param jobs the inputs
     * @return required volume in m3
     */
    @Benchmark
    public double inLine(SizingJobs jobs) {
        int i = jobs.next();
        double cold = jobs.coldPressure[i] + AIR;
        double last = jobs.finalPressure[i] + AIR;
        double t1 = jobs.cold[i];
        double t2 = jobs.hot[i];
        double expansion = Iapws97.specificVolume(t2, last) / Iapws97.specificVolume(t1, cold) - 1;
        return jobs.contents[i] * (expansion - 3 * STEEL * (t2 - t1)) / (1 - cold / last);
    }

    /**
     * The library: all checks, result object included.
     *
     * @param jobs the inputs
     * @return the answer
     */
    @Benchmark
    public Sizing sizing(SizingJobs jobs) {
        return Methods.ASHRAE.size(jobs.jobs[jobs.next()]);
    }

    /**
     * The library, and the required volume read from the answer.
     *
     * @param jobs the inputs
     * @return the required volume
     */
    @Benchmark
    public Volume sizingAndVolume(SizingJobs jobs) {
        return Methods.ASHRAE.size(jobs.jobs[jobs.next()]).requiredVolume();
    }
}
