package org.ullage.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** The pressure of a loop in use at a temperature, against the same arithmetic written in line. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class OperatingBenchmark {

    private static final double CONTENTS = 1.0;
    private static final double NOMINAL = 0.08;
    private static final double AIR = 101_325;
    private static final double FILL = 150_000 + AIR;
    private static final double CHARGE = 120_000 + AIR;
    private static final double FILLED_AT = 285.15;
    private static final int INPUTS = 1024;

    private final double[] kelvins = new double[INPUTS];
    private final LoopFluid kell = Water.KELL_1975;
    private final OperatingCurve byKell = curve(Water.KELL_1975);
    private final OperatingCurve byIapws = curve(Water.IAPWS_IF97);
    private int next;

    /** Temperatures from 20 to 60 degC in no order. */
    public OperatingBenchmark() {
        for (int i = 0; i < INPUTS; i++) {
            kelvins[i] = 293.15 + 40.0 * (i * 389 % INPUTS) / INPUTS;
        }
    }

    private static OperatingCurve curve(LoopFluid fluid) {
        Loop loop = Loop.withContents(Volume.cubicMetres(CONTENTS)).rigid().filledWith(fluid);
        InstalledVessel vessel =
                InstalledVessel.of("V1", Volume.cubicMetres(NOMINAL), GaugePressure.ofSi(CHARGE - AIR));
        Reading fill = new Reading(GaugePressure.ofSi(FILL - AIR), Temperature.ofSi(FILLED_AT));
        return LoopInUse.of(loop, VesselBank.of(vessel), fill).curve();
    }

    private double temperature() {
        next = (next + 1) % INPUTS;
        return kelvins[next];
    }

    /** Gas at the fill less what the loop gives off, in line, with the same fluid. */
    @Benchmark
    public double inLine() {
        double here = temperature();
        double ratio = kell.specificVolumeSi(here, FILL) / kell.specificVolumeSi(FILLED_AT, FILL);
        double gas = NOMINAL * CHARGE;
        return gas / (gas / FILL - CONTENTS * (ratio - 1));
    }

    /** The curve in closed form: a fluid whose density does not ask for the pressure. */
    @Benchmark
    public double closedForm() {
        return byKell.pressureSi(temperature());
    }

    /** The curve with a fluid whose density depends on the pressure that is sought. */
    @Benchmark
    public double pressureDependent() {
        return byIapws.pressureSi(temperature());
    }
}
