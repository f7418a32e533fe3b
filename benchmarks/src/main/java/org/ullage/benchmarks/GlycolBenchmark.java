package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.BivariateFunction;
import org.apache.commons.math3.analysis.interpolation.BicubicInterpolator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Glycol;
import org.ullage.fluids.GlycolModel;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.VolumeFraction;

/** Specific volume of a glycol solution by three models, against the bicubic interpolator of commons-math3 on the same table. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
public class GlycolBenchmark {

    private static final double ONE_ATMOSPHERE = 101_325;
    private static final double ICE_POINT = 273.15;
    private static final double CONCENTRATION = 37;

    private final LoopFluid ashrae = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, VolumeFraction.percent(CONCENTRATION));
    private final LoopFluid melinder = Glycol.ETHYLENE.by(GlycolModel.MELINDER, MassFraction.percent(CONCENTRATION));
    private final LoopFluid conde = Glycol.ETHYLENE.by(GlycolModel.CONDE, MassFraction.percent(CONCENTRATION));
    private final BivariateFunction bicubic = bicubic();

    private static BivariateFunction bicubic() {
        double[] celsius = new double[21];
        double[] percent = new double[6];
        double[][] volumes = new double[celsius.length][percent.length];
        for (int j = 0; j < percent.length; j++) {
            percent[j] = 10 + 10 * j;
            LoopFluid fluid = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, VolumeFraction.percent(percent[j]));
            for (int i = 0; i < celsius.length; i++) {
                celsius[i] = 5 * i;
                volumes[i][j] = fluid.specificVolumeSi(celsius[i] + ICE_POINT, ONE_ATMOSPHERE);
            }
        }
        return new BicubicInterpolator().interpolate(celsius, percent, volumes);
    }

    private static double celsius(WaterStates states, int i) {
        return Math.min(99, states.kelvins[i] - ICE_POINT);
    }

    /**
     * The yardstick.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double bicubic(WaterStates states) {
        return bicubic.value(celsius(states, states.next()), CONCENTRATION);
    }

    /**
     * The handbook's table.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double ashrae(WaterStates states) {
        return ashrae.specificVolumeSi(celsius(states, states.next()) + ICE_POINT, ONE_ATMOSPHERE);
    }

    /**
     * Melinder's polynomial.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double melinder(WaterStates states) {
        return melinder.specificVolumeSi(celsius(states, states.next()) + ICE_POINT, ONE_ATMOSPHERE);
    }

    /**
     * Conde's correlation.
     *
     * @param states the inputs
     * @return m3/kg
     */
    @Benchmark
    public double conde(WaterStates states) {
        return conde.specificVolumeSi(celsius(states, states.next()) + ICE_POINT, ONE_ATMOSPHERE);
    }
}
