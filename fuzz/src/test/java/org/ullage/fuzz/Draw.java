package org.ullage.fuzz;

import java.util.List;
import java.util.SplittableRandom;

/** What one case draws from: the same seed, target and index always give the same case. */
final class Draw {

    /** Edges of the number line and of the formulas: zero, denormal, tiny, huge, not a number. */
    private static final double[] EDGES = {
        0,
        -0.0,
        Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1e-300,
        1e-30,
        1e-9,
        1 - 1e-16,
        1,
        1 + 1e-15,
        1e9,
        1e30,
        1e300,
        Double.MAX_VALUE,
        -Double.MIN_VALUE,
        -1e-9,
        -1,
        -1e30,
        -Double.MAX_VALUE,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
    };

    /** How often a value leaves its usual range: most cases stay in it, so that they reach an answer. */
    private static final double[] BOLDNESS = {0, 0, 0, 0, 0.03, 0.1, 0.1, 0.5};

    private final SplittableRandom random;
    private final double boldness;

    Draw(long seed, String target, long index) {
        random = new SplittableRandom(seed ^ (target.hashCode() * 0x9E3779B97F4A7C15L) ^ (index * 0xD1342543DE82EF95L));
        boldness = BOLDNESS[random.nextInt(BOLDNESS.length)];
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    boolean bold() {
        return boldness > 0 && chance(boldness);
    }

    int below(int limit) {
        return random.nextInt(limit);
    }

    long bits() {
        return random.nextLong();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A number whose order of magnitude is even between two, both above zero. */
    double magnitude(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    double edge() {
        return chance(0.2) ? Double.longBitsToDouble(bits()) : EDGES[below(EDGES.length)];
    }

    /** In the usual range as a rule, sometimes at its ends, an edge when bold. */
    double number(double low, double high) {
        if (bold()) {
            return chance(0.3) ? between(2 * low - high, 2 * high - low) : edge();
        }
        return chance(0.05) ? (chance(0.5) ? low : high) : between(low, high);
    }

    <T> T of(List<T> choices) {
        return choices.get(below(choices.size()));
    }

    @SafeVarargs
    final <T> T of(T... choices) {
        return choices[below(choices.length)];
    }
}
