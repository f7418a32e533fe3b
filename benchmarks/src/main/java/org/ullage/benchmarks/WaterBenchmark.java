package org.ullage.benchmarks;

import com.hummeling.if97.IF97;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Iapws97;
import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;

/** Specific volume of liquid water by IAPWS-IF97 region 1, against com.hummeling:if97 1.0.5. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
public class WaterBenchmark {

    private final IF97 yardstick = new IF97(IF97.UnitSystem.SI);
    private final LoopFluid water = Water.IAPWS_IF97;

    /**
     * The yardstick.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double if97(WaterStates states) {
        int i = states.next();
        return yardstick.specificVolumePT(states.pascals[i], states.kelvins[i]);
    }

    /**
     * The bare equation.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double equation(WaterStates states) {
        int i = states.next();
        return Iapws97.specificVolume(states.kelvins[i], states.pascals[i]);
    }

    /**
     * The loop fluid, which also checks that the water is liquid.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double loopFluid(WaterStates states) {
        int i = states.next();
        return water.specificVolumeSi(states.kelvins[i], states.pascals[i]);
    }
}
