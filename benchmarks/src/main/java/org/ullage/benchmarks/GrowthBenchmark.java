package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.published.Methods;
import org.ullage.quantity.Volume;
import org.ullage.sizing.SizingBatch;
import org.ullage.uncertainty.SizingUncertainty;
import org.ullage.uncertainty.Uncertain;

/** How the time grows with the work: a portfolio of loops, each its own job; the same as columns; draws of one uncertain sizing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class GrowthBenchmark {

    /** Loops, rows or draws. */
    @Param({"1000", "10000", "100000"})
    private int count;

    private SizingJob[] jobs = {};
    private SizingBatch batch = SizingBatch.of(Methods.ASHRAE, new SizingJobs().jobs[0]);
    private SizingUncertainty question = SizingUncertainty.of(Methods.ASHRAE, new SizingJobs().jobs[0]);
    private double[] volumes = {};

    /** Makes as many jobs as asked for. */
    @Setup
    public void prepare() {
        SizingJobs some = new SizingJobs();
        jobs = new SizingJob[count];
        double[] contents = new double[count];
        double[] hot = new double[count];
        for (int i = 0; i < count; i++) {
            int from = i % SizingJobs.COUNT;
            jobs[i] = some.jobs[from];
            contents[i] = some.contents[from];
            hot[i] = some.hot[from];
        }
        volumes = new double[count];
        batch = SizingBatch.of(Methods.ASHRAE, some.jobs[0])
                .varying(SizingInput.CONTENTS, contents)
                .varying(SizingInput.HOT_TEMPERATURE, hot);
        question = SizingUncertainty.of(Methods.ASHRAE, some.jobs[0])
                .contents(Uncertain.uniform(Volume.cubicMetres(1), Volume.cubicMetres(2)));
    }

    /**
     * Every loop by itself.
     *
     * @return the sum of the required volumes
     */
    @Benchmark
    public double portfolio() {
        double sum = 0;
        for (SizingJob job : jobs) {
            sum += Methods.ASHRAE.size(job).requiredVolume().si();
        }
        return sum;
    }

    /**
     * The loops as columns.
     *
     * @return how many were refused
     */
    @Benchmark
    public int columns() {
        return batch.requiredVolumes(volumes);
    }

    /**
     * Draws of one sizing.
     *
     * @return the 95 % quantile
     */
    @Benchmark
    public Volume draws() {
        return question.sampled(count, 1).quantile(0.95);
    }
}
