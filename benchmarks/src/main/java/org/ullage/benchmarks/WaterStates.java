package org.ullage.benchmarks;

import java.util.SplittableRandom;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Liquid states of a heating or chilled loop that differ from call to call. */
@State(Scope.Thread)
public class WaterStates {

    private static final int COUNT = 1024;
    private static final long SEED = 20_261_126;

    final double[] kelvins = new double[COUNT];
    final double[] pascals = new double[COUNT];
    private int next;

    /** Draws the states: 1 to 109 degC at 1.5 to 10 bar absolute, all liquid. */
    public WaterStates() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < COUNT; i++) {
            kelvins[i] = random.nextDouble(274, 382);
            pascals[i] = random.nextDouble(1.5e5, 10e5);
        }
    }

    int next() {
        next = (next + 1) & (COUNT - 1);
        return next;
    }
}
