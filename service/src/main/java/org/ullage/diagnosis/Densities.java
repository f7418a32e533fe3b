package org.ullage.diagnosis;

import org.apache.commons.math3.distribution.NormalDistribution;

/** Probability densities of readings, on bare numbers. */
final class Densities {

    private static final NormalDistribution UNIT = new NormalDistribution(null, 0, 1);

    /** The variance of a value that is off by no more than a is a^2 / 3 where every error is as likely. */
    private static final int UNIFORM = 3;

    private Densities() {}

    /** Standard uncertainty of a value that is off by no more than a limit: limit / sqrt 3, JCGM 100:2008 clause 4.3.7. */
    static double standard(double limit) {
        return limit / Math.sqrt(UNIFORM);
    }

    static double normal(double value, double mean, double deviation) {
        return UNIT.density((value - mean) / deviation) / deviation;
    }

    /** The chance that a normal value is above a limit. */
    static double above(double mean, double limit, double deviation) {
        return UNIT.cumulativeProbability((mean - limit) / deviation);
    }

    /** A value anywhere between two ends, read by an instrument with a standard uncertainty. */
    static double uniform(double value, double from, double to, double deviation) {
        double inside = UNIT.cumulativeProbability((value - from) / deviation)
                - UNIT.cumulativeProbability((value - to) / deviation);
        return inside / (to - from);
    }
}
