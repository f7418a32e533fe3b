package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;

/** Tables whose columns reach over different temperatures, as those with blanks do. */
class DensitySurfaceTest {

    @Test
    void twoColumnsAreJoinedByALine() {
        DensitySurface surface = surface(DensitySurfaceTest::line, column(10, 0, 40), column(20, 0, 40));
        assertThat(surface.at(14).value(17)).isCloseTo(1000 + 28 - 0.5 * 17, within(1e-9));
    }

    @Test
    void twoColumnsNeedNoRowInCommon() {
        DensitySurface surface =
                surface(DensitySurfaceTest::line, rows(10, 0.0, 10.0, 20.0, 30.0), rows(20, 5.0, 15.0, 25.0, 35.0));
        PiecewiseCubic curve = surface.at(15);
        assertThat(curve.knots()).containsExactly(5, 10, 15, 20, 25, 30);
        assertThat(curve.value(17)).isCloseTo(1000 + 30 - 0.5 * 17, within(1e-9));
    }

    @Test
    void twoColumnsMayShareTheirEndsAlone() {
        DensitySurface surface = surface(DensitySurfaceTest::line, rows(10, 0.0, 5.0, 10.0), rows(20, 8.0, 18.0, 28.0));
        PiecewiseCubic curve = surface.at(15);
        assertThat(curve.knots()).containsExactly(8, 9, 10);
        assertThat(curve.value(9.5)).isCloseTo(1000 + 30 - 0.5 * 9.5, within(1e-9));
    }

    @Test
    void columnsThatShareLessThanAKelvinAreNotInterpolatedBetween() {
        Column low = column(20, 0, 40);
        assertThat(surface(DensitySurfaceTest::line, low, column(30, 39, 79))
                        .at(25)
                        .value(39.5))
                .isCloseTo(1050 - 19.75, within(1e-9));
        DensitySurface apart = surface(DensitySurfaceTest::line, low, column(30, 39.5, 79.5));
        assertThatThrownBy(() -> apart.at(25))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("between 20.0 % and 30.0 %")
                .hasMessageContaining("share at least 1.0 K");
        assertThat(apart.at(30).value(79.5)).isCloseTo(1060 - 39.75, within(1e-9));
    }

    /** A third column that starts or ends too early still tells the bend, here exactly, as it is the same at all temperatures. */
    @Test
    void bendOfTwoFullColumnsComesFromAThird() {
        DensitySurface right =
                surface(DensitySurfaceTest::parabola, column(10, 0, 80), column(20, 0, 80), column(30, 40, 80));
        assertThat(right.at(15).value(20)).isCloseTo(parabola(15) - 10, within(1e-9));
        DensitySurface left =
                surface(DensitySurfaceTest::parabola, column(10, 40, 80), column(20, 0, 80), column(30, 0, 80));
        assertThat(left.at(25).value(20)).isCloseTo(parabola(25) - 10, within(1e-9));
    }

    @Test
    void fourColumnsThatReachFollowACubic() {
        DensitySurface surface = surface(
                DensitySurfaceTest::cubic, column(10, 0, 80), column(20, 0, 80), column(30, 0, 80), column(40, 0, 80));
        assertThat(surface.at(25).value(33)).isCloseTo(cubic(25) - 16.5, within(1e-9));
    }

    /** The parabola through 10, 20 and 30 misses a cubic by its factor times (c - 10)(c - 20)(c - 30). */
    @Test
    void columnThatDoesNotReachAllTemperaturesIsLeftOut() {
        double missed = 2e-4 * 15 * 5 * -5;
        for (Column shorter : new Column[] {column(40, 40, 80), column(40, 0, 40)}) {
            DensitySurface surface = surface(
                    DensitySurfaceTest::cubic, column(10, 0, 80), column(20, 0, 80), column(30, 0, 80), shorter);
            assertThat(surface.at(25).value(33)).isCloseTo(cubic(25) - 16.5 - missed, within(1e-9));
        }
    }

    /** The cubic through 10 to 40 misses a quartic by its factor times (c - 10)(c - 20)(c - 30)(c - 40). */
    @Test
    void noMoreThanFourColumnsAreTakenHoweverManyThereAre() {
        DensitySurface surface = surface(
                DensitySurfaceTest::quartic,
                column(10, 0, 80),
                column(20, 0, 80),
                column(30, 0, 80),
                column(40, 0, 80),
                column(50, 0, 80));
        double missed = 1e-5 * 15 * 5 * -5 * -15;
        assertThat(surface.at(25).value(33)).isCloseTo(quartic(25) - 16.5 - missed, within(1e-9));
    }

    private record Column(double concentration, List<Double> celsius) {}

    private static Column rows(double concentration, Double... celsius) {
        return new Column(concentration, List.of(celsius));
    }

    private static Column column(double concentration, double from, double to) {
        double step = (to - from) / 4;
        return rows(concentration, from, from + step, from + 2 * step, from + 3 * step, to);
    }

    private static double line(double concentration) {
        return 1000 + 2 * concentration;
    }

    private static double parabola(double c) {
        return 1000 + 2 * c - 0.01 * c * c;
    }

    private static double cubic(double c) {
        return parabola(c) + 2e-4 * c * c * c;
    }

    private static double quartic(double c) {
        return parabola(c) + 1e-5 * c * c * c * c;
    }

    /** Density falls by 0.5 kg/m3 per kelvin everywhere. */
    private static DensitySurface surface(DoubleUnaryOperator atZero, Column... columns) {
        double[] concentrations = new double[columns.length];
        PiecewiseCubic[] curves = new PiecewiseCubic[columns.length];
        for (int i = 0; i < columns.length; i++) {
            double start = atZero.applyAsDouble(columns[i].concentration());
            double[] celsius = columns[i].celsius().stream()
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            double[] densities = new double[celsius.length];
            for (int k = 0; k < celsius.length; k++) {
                densities[k] = start - 0.5 * celsius[k];
            }
            concentrations[i] = columns[i].concentration();
            curves[i] = PiecewiseCubic.through(celsius, densities);
        }
        return new DensitySurface(concentrations, curves);
    }
}
