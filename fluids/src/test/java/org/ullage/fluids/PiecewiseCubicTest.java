package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Looked up through buckets, the curve is that of the library's spline, whose cubics differ much on these uneven knots. */
class PiecewiseCubicTest {

    private static final int POINTS = 2000;

    static Stream<double[]> knots() {
        return Stream.of(
                new double[] {20, 21, 30, 55, 56.5, 90},
                new double[] {-40, -39.5, -10, 0.1, 0.2, 60, 100},
                new double[] {-90, -60, -30, -29, -5},
                new double[] {0, 0.01, 100, 100.01, 200},
                new double[] {5, 6, 20, 100},
                new double[] {-30, 10, 12});
    }

    @ParameterizedTest
    @MethodSource("knots")
    void everyPointIsOnItsOwnCubic(double[] x) {
        double[] y = zigzag(x.length);
        UnivariateFunction spline = x.length < 5
                ? new SplineInterpolator().interpolate(x, y)
                : new AkimaSplineInterpolator().interpolate(x, y);
        PiecewiseCubic curve = PiecewiseCubic.through(x, y);
        double first = x[0];
        double last = x[x.length - 1];
        for (int i = 0; i <= POINTS; i++) {
            double at = (first * (POINTS - i) + last * i) / POINTS;
            assertThat(curve.value(at)).as("at %s", at).isCloseTo(spline.value(at), within(1e-8));
        }
        assertThat(curve.first()).isEqualTo(first);
        assertThat(curve.last()).isEqualTo(last);
    }

    @Test
    void outsideTheKnotsTheFirstAndTheLastCubicGoOn() {
        double[] x = {0, 10, 20, 30, 40};
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = 1000 - 0.5 * x[i] - 0.003 * x[i] * x[i];
        }
        PiecewiseCubic curve = PiecewiseCubic.through(x, y);
        assertThat(curve.value(-1)).isCloseTo(1000 + 0.5 - 0.003, within(1e-9));
        assertThat(curve.value(41)).isCloseTo(1000 - 20.5 - 0.003 * 41 * 41, within(1e-9));
    }

    private static double[] zigzag(int length) {
        double[] y = new double[length];
        for (int i = 0; i < length; i++) {
            y[i] = i % 2 == 0 ? i : -3 * i;
        }
        return y;
    }
}
