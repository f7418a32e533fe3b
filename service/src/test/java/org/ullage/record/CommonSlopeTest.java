package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class CommonSlopeTest {

    private static TrendPoint at(double years, double value, int stretch) {
        return new TrendPoint(years, value, stretch);
    }

    /** By hand: mean time 1.5, mean value 2.5; S_xx = 5, S_xy = 4; residuals -0.3, 0.9, -0.9, 0.3; s^2 = 1.8 / 2. */
    @Test
    void oneStretchIsTheUsualLine() {
        CommonSlope line = CommonSlope.of(List.of(at(0, 1, 0), at(1, 3, 0), at(2, 2, 0), at(3, 4, 0)));
        assertThat(line.slope()).isCloseTo(0.8, within(1e-12));
        assertThat(line.timeSquares()).isCloseTo(5, within(1e-12));
        assertThat(line.products()).isCloseTo(4, within(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(2);
        assertThat(line.scatter()).isCloseTo(Math.sqrt(0.9), within(1e-12));
        // t(0.975; 2) = 4.303, NIST/SEMATECH e-Handbook, table 1.3.6.7.2
        assertThat(line.quantile()).isCloseTo(4.303, within(5e-4));
        SimpleRegression usual = new SimpleRegression();
        usual.addData(new double[][] {{0, 1}, {1, 3}, {2, 2}, {3, 4}});
        assertThat(line.halfWidth()).isCloseTo(usual.getSlopeConfidenceInterval(), within(1e-9));
    }

    /** The same fit with a column for each stretch: an independent way to the slope, its error and the level. */
    @Test
    void stretchesAreLevelsOfAMultipleRegression() {
        Random random = new Random(7);
        List<TrendPoint> points = new ArrayList<>();
        double[][] columns = new double[13][];
        double[] values = new double[13];
        for (int i = 0; i < 13; i++) {
            int stretch = i < 5 ? 0 : i < 7 ? 1 : 2;
            double years = 0.7 * i + 0.1 * random.nextDouble();
            double value = 10 * stretch - 0.3 * years + random.nextGaussian();
            points.add(at(years, value, stretch));
            columns[i] = new double[] {stretch == 0 ? 1 : 0, stretch == 1 ? 1 : 0, stretch == 2 ? 1 : 0, years};
            values[i] = value;
        }
        OLSMultipleLinearRegression other = new OLSMultipleLinearRegression();
        other.setNoIntercept(true);
        other.newSampleData(values, columns);
        double[] found = other.estimateRegressionParameters();
        CommonSlope line = CommonSlope.of(points);
        assertThat(line.degreesOfFreedom()).isEqualTo(9);
        assertThat(line.slope()).isCloseTo(found[3], within(1e-10));
        assertThat(line.scatter()).isCloseTo(other.estimateRegressionStandardError(), within(1e-10));
        assertThat(line.halfWidth())
                .isCloseTo(line.quantile() * other.estimateRegressionParametersStandardErrors()[3], within(1e-10));
        double[][] variance = other.estimateRegressionParametersVariance();
        double years = 12;
        double mean = found[2] + found[3] * years;
        double square = variance[2][2] + 2 * years * variance[2][3] + years * years * variance[3][3];
        double scale = other.estimateErrorVariance();
        assertThat(line.lowerEnd(2, years)).isCloseTo(mean - line.quantile() * Math.sqrt(square * scale), within(1e-9));
    }

    @Test
    void aPointAloneInItsStretchChangesNothing() {
        List<TrendPoint> points = List.of(at(0, 1, 0), at(1, 3, 0), at(2, 2, 0));
        List<TrendPoint> more = new ArrayList<>(points);
        more.add(at(9, 100, 1));
        assertThat(CommonSlope.of(more).slope())
                .isEqualTo(CommonSlope.of(points).slope());
        assertThat(CommonSlope.of(more).halfWidth())
                .isEqualTo(CommonSlope.of(points).halfWidth());
    }

    @Test
    void tellsWhenItIsNotEnough() {
        assertThat(CommonSlope.of(List.of()).isEnough()).isFalse();
        assertThat(CommonSlope.of(List.of(at(0, 1, 0))).isEnough()).isFalse();
        assertThat(CommonSlope.of(List.of(at(0, 1, 0), at(1, 1, 0))).isEnough()).isFalse();
        assertThat(CommonSlope.of(List.of(at(0, 1, 0), at(0, 1, 0), at(0, 2, 0)))
                        .isEnough())
                .as("all on one day")
                .isFalse();
        assertThat(CommonSlope.of(List.of(at(0, 1, 0), at(1, 1, 0), at(1, 2, 1), at(2, 2, 1)))
                        .isEnough())
                .as("two intervals in two stretches")
                .isTrue();
    }

    @Test
    void namesTheOutlierOnly() {
        List<TrendPoint> points = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            points.add(at(i, 5 - 0.1 * i + (i % 2 == 0 ? 0.01 : -0.01), 0));
        }
        assertThat(CommonSlope.of(points).outliers()).isEmpty();
        points.set(4, at(4, 5.2, 0));
        assertThat(CommonSlope.of(points).outliers()).containsExactly(4);
    }

    /** Three points of a line and a fourth far off: four are the fewest that can tell. */
    @Test
    void ofFourPointsOneMayBeAnOutlier() {
        List<TrendPoint> points = List.of(at(0, 1, 0), at(1, 2, 0), at(2, 3, 0), at(3, 9, 0));
        assertThat(CommonSlope.of(points).outliers()).containsExactly(3);
        assertThat(CommonSlope.of(points.subList(1, 4)).outliers()).isEmpty();
    }

    @Test
    void roundingIsNoOutlier() {
        List<TrendPoint> points = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            points.add(at(i, 200_000 - 1e4 * i * (1 + 1e-15), 0));
        }
        assertThat(CommonSlope.of(points).outliers()).isEmpty();
    }

    /** With pure chance a set of readings is called out at most about as often as the level says. */
    @Test
    void chanceSeldomMakesAnOutlier() {
        Random random = new Random(11);
        int called = 0;
        for (int trial = 0; trial < 2000; trial++) {
            List<TrendPoint> points = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                points.add(at(i, random.nextGaussian(), 0));
            }
            called += CommonSlope.of(points).outliers().isEmpty() ? 0 : 1;
        }
        assertThat(called / 2000.0).isBetween(0.03, 0.07);
    }
}
