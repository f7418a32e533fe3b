package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.quantity.OutOfRangeException;

class SpreadTest {

    private static final int MANY = 1_000_000;

    static Stream<Spread> spreads() {
        return Stream.of(
                Spread.normal(3, 2),
                Spread.uniform(-1, 5),
                Spread.triangular(1, 2, 9),
                Spread.triangular(1, 1, 2),
                Spread.triangular(1, 2, 2));
    }

    /** By chance alone the mean moves by u / 1000 and the standard deviation by about as much. */
    @ParameterizedTest
    @MethodSource("spreads")
    void drawsHaveTheStatedMoments(Spread spread) {
        double[] draws = new double[MANY];
        spread.fill(draws, new SplittableRandom(1));
        Moments moments = new Moments();
        for (double draw : draws) {
            moments.add(draw);
        }
        double u = spread.standardUncertainty();
        assertThat(moments.mean()).isCloseTo(spread.mean(), within(4 * u / 1000));
        assertThat(Math.sqrt(moments.variance())).isCloseTo(u, within(4 * u / 1000));
    }

    /** JCGM 100:2008, 4.3.7 and 4.3.9 (from memory): a / sqrt 3 and a / sqrt 6. */
    @Test
    void boundsBecomeStandardUncertainties() {
        assertThat(Spread.uniform(10, 14).standardUncertainty()).isCloseTo(2 / Math.sqrt(3), within(1e-15));
        assertThat(Spread.triangular(10, 12, 14).standardUncertainty()).isCloseTo(2 / Math.sqrt(6), within(1e-15));
        assertThat(Spread.triangular(10, 12, 14).mean()).isEqualTo(12);
        assertThat(Spread.triangular(0, 0, 3).mean()).isEqualTo(1);
    }

    @Test
    void noSpreadIsTheValueItselfToTheLastBit() {
        double value = 0.1 + 0.2;
        for (Spread spread : new Spread[] {
            Spread.exactly(value), Spread.uniform(value, value), Spread.triangular(value, value, value)
        }) {
            double[] draws = new double[8];
            spread.fill(draws, new SplittableRandom(3));
            assertThat(spread.isCertain()).isTrue();
            assertThat(spread.mean()).isEqualTo(value);
            assertThat(draws).containsOnly(value);
        }
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThatThrownBy(() -> Spread.normal(1, -1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.normal(Double.NaN, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.uniform(2, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.uniform(1, Double.POSITIVE_INFINITY)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.triangular(1, 3, 2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.triangular(0, 1, 1e200)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Spread.normal(0, 1e308)).isInstanceOf(OutOfRangeException.class);
    }
}
