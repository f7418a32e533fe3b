package org.ullage.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.ReliefValve;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.uncertainty.SizingUncertainty;
import org.ullage.uncertainty.Spread;
import org.ullage.uncertainty.Uncertain;
import org.ullage.vessel.VesselType;

/**
 * A sizing by drawing, quantiles and shares of the inputs included, per draw: against the in-line sizing of {@link SizingBenchmark},
 * which is run beside it.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
public class UncertaintyBenchmark {

    private static final int DRAWS = 1_000_000;
    private static final int FEW = 1024;

    private final SizingUncertainty certainTemperatures = question();
    private final SizingUncertainty uncertainTemperatures = question()
            .coldTemperature(Uncertain.uniform(Temperature.celsius(8), Temperature.celsius(12)))
            .hotTemperature(Uncertain.normal(Temperature.celsius(80), TemperatureDifference.kelvins(1)));
    private final double[] drawn = new double[FEW];
    private final SplittableRandom random = new SplittableRandom(1);
    private final Spread normal = Spread.normal(1, 2);
    private final Spread uniform = Spread.uniform(1, 2);
    private final Spread triangular = Spread.triangular(1, 2, 4);
    private long seed;

    private static SizingUncertainty question() {
        PressureInputs pressures = PressureInputs.NONE
                .withColdPressure(GaugePressure.bar(1.2))
                .withPreCharge(GaugePressure.bar(0.9))
                .withReliefSetting(GaugePressure.bar(3));
        SizingJob job = new SizingJob(
                Loop.withContents(Volume.litres(1000)).steel().filledWith(Water.IAPWS_IF97),
                VesselType.bladder(),
                LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(80)),
                pressures);
        return SizingUncertainty.of(Methods.ASHRAE, job)
                .contents(Uncertain.triangular(Volume.litres(900), Volume.litres(1000), Volume.litres(1200)))
                .coldPressure(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.bar(0.05)))
                .charge(Uncertain.normal(GaugePressure.bar(0.9), PressureDifference.bar(0.03)))
                .reliefSetting(Uncertain.opening(ReliefValve.iso4126(GaugePressure.bar(3))));
    }

    /**
     * Contents, cold pressure, charge and valve uncertain, temperatures certain.
     *
     * @return the 95 % quantile
     */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public Volume certainTemperatures() {
        return certainTemperatures.sampled(DRAWS, seed++).quantile(0.95);
    }

    /**
     * Both temperatures uncertain too: the whole method for each draw.
     *
     * @return the 95 % quantile
     */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public Volume uncertainTemperatures() {
        return uncertainTemperatures.sampled(DRAWS, seed++).quantile(0.95);
    }

    /**
     * The chance that the valve lifts, temperatures certain.
     *
     * @return the chance
     */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double liftChance() {
        return certainTemperatures.liftChance(Volume.litres(90), DRAWS, seed++).chance();
    }

    /**
     * Drawing one normal number.
     *
     * @return the numbers
     */
    @Benchmark
    @OperationsPerInvocation(FEW)
    public double[] drawNormal() {
        normal.fill(drawn, random);
        return drawn;
    }

    /**
     * Drawing one uniform number.
     *
     * @return the numbers
     */
    @Benchmark
    @OperationsPerInvocation(FEW)
    public double[] drawUniform() {
        uniform.fill(drawn, random);
        return drawn;
    }

    /**
     * Drawing one triangular number.
     *
     * @return the numbers
     */
    @Benchmark
    @OperationsPerInvocation(FEW)
    public double[] drawTriangular() {
        triangular.fill(drawn, random);
        return drawn;
    }
}
