package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class HistogramTest {

    private static final int PILOT = 2000;

    @Property(tries = 50)
    void quantilesAreThoseOfTheSortedValuesToWithinABin(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 3) double skew) {
        double[] values = skewed(seed, skew);
        Histogram histogram = filled(values);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] pilot = Arrays.copyOf(values, PILOT);
        Arrays.sort(pilot);
        double bin = (pilot[PILOT - 1] - pilot[0]) / 4096;
        for (double share = 0.01; share < 1; share += 0.01) {
            double exact = sorted[(int) Math.ceil(share * values.length) - 1];
            if (exact < pilot[PILOT - 1] && exact > pilot[0]) {
                assertThat(histogram.quantile(share)).isCloseTo(exact, within(bin * (1 + 1e-9)));
            }
        }
    }

    @Property(tries = 50)
    void quantilesRiseAndShareUpToIsTheirInverse(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 3) double skew) {
        Histogram histogram = filled(skewed(seed, skew));
        double before = histogram.least();
        for (double share = 0.001; share < 1; share += 0.001) {
            double value = histogram.quantile(share);
            assertThat(value).isGreaterThanOrEqualTo(before);
            assertThat(histogram.shareUpTo(value)).isCloseTo(share, within(1e-9));
            before = value;
        }
        assertThat(histogram.quantile(1)).isEqualTo(histogram.greatest());
        assertThat(histogram.quantile(0)).isEqualTo(histogram.least());
    }

    @Property(tries = 20)
    void orderDoesNotMatter(@ForAll long seed, @ForAll @IntRange(min = 1, max = 1000) int turn) {
        double[] values = skewed(seed, 1);
        Histogram one = new Histogram(1, 2);
        Histogram other = new Histogram(1, 2);
        for (int i = 0; i < values.length; i++) {
            one.add(values[i]);
            other.add(values[(i + turn) % values.length]);
        }
        assertThat(one.quantile(0.37)).isEqualTo(other.quantile(0.37));
    }

    @Example
    void oneValueHasNoSpread() {
        Histogram histogram = new Histogram(0.3, 0.3);
        histogram.add(0.3);
        histogram.add(0.3);
        assertThat(histogram.quantile(0.01)).isEqualTo(0.3);
        assertThat(histogram.quantile(0.99)).isEqualTo(0.3);
        assertThat(histogram.shareUpTo(0.3)).isEqualTo(1);
        assertThat(histogram.shareUpTo(0.29)).isZero();
    }

    /** The ends of a pilot fall on ends of bins, so the greatest value may have a bin without width. */
    @Example
    void valuesNextToTheGreatestAreCounted() {
        Histogram histogram = new Histogram(1, 2);
        for (double value : new double[] {1, 1.25, 1.5, 2}) {
            histogram.add(value);
        }
        assertThat(histogram.shareUpTo(1.9)).isEqualTo(0.75);
        assertThat(histogram.shareUpTo(Math.nextDown(2.0))).isEqualTo(0.75);
        assertThat(histogram.quantile(0.99)).isEqualTo(2);
    }

    @Example
    void valuesFarBeyondThePilotAreCounted() {
        Histogram histogram = new Histogram(0, 1);
        for (int i = 0; i < 100; i++) {
            histogram.add(i);
        }
        assertThat(histogram.greatest()).isEqualTo(99);
        assertThat(histogram.quantile(0.5)).isBetween(1.5, 99.0);
        assertThat(histogram.shareUpTo(1.2)).isCloseTo(0.02, within(1e-9));
    }

    private static double[] skewed(long seed, double skew) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] values = new double[20_000];
        Arrays.setAll(values, i -> Math.exp(skew * Ziggurat.normal(random)));
        return values;
    }

    private static Histogram filled(double[] values) {
        double[] pilot = Arrays.copyOf(values, PILOT);
        Arrays.sort(pilot);
        Histogram histogram = new Histogram(pilot[0], pilot[PILOT - 1]);
        for (double value : values) {
            histogram.add(value);
        }
        return histogram;
    }
}
