package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;

class LinearPropagationTest {

    /**
     * JCGM 100:2008, H.1 (from memory): l = 50.000838 mm, u = 32 nm, 16 effective degrees of freedom and k = 2.92 for 99 %. The printed
     * U = 93 nm is k times the rounded u; unrounded it is 92.5 nm.
     */
    @Test
    void endGauge() {
        LinearUncertainty length =
                LinearPropagation.of(PublishedExamples.END_GAUGE, PublishedExamples.END_GAUGE_INPUTS);
        assertThat(length.value()).isCloseTo(50.000838e-3, within(0.5e-9));
        assertThat(length.standardUncertainty()).isCloseTo(32e-9, within(0.5e-9));
        assertThat(length.degreesOfFreedom()).isBetween(16.0, 17.0);
        assertThat(length.coverageFactor(0.99)).isCloseTo(2.92, within(0.005));
        assertThat(length.expanded(2.92)).isCloseTo(92.5e-9, within(0.05e-9));
    }

    /**
     * JCGM 100:2008, H.2 (from memory): R = 127.732(71), X = 219.847(295), Z = 254.260(236) ohm. The printed 0.295 does not
     * follow from the printed observations, which give 0.2956 and, by the scatter of X worked out for each observation, 0.2955; it is
     * that scatter with each X rounded to 0.01 ohm, 0.2948.
     */
    @Test
    void resistanceAndReactanceFromCorrelatedObservations() {
        assertImpedance(x -> x[0] / x[1] * Math.cos(x[2]), 127.732, 0.071);
        assertImpedance(x -> x[0] / x[1] * Math.sin(x[2]), 219.847, 0.2956);
        assertImpedance(x -> x[0] / x[1], 254.260, 0.236);
    }

    private static void assertImpedance(ModelFunction model, double ohms, double uncertainty) {
        double[][] seen = PublishedExamples.OBSERVATIONS;
        double[][] r = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double product = covariance(seen[i], seen[i]) * covariance(seen[j], seen[j]);
                r[i][j] = i == j ? 1 : covariance(seen[i], seen[j]) / Math.sqrt(product);
            }
        }
        List<ModelInput> inputs =
                List.of(observed("voltage", seen[0]), observed("current", seen[1]), observed("phase", seen[2]));
        LinearUncertainty result = LinearPropagation.of(model, inputs, Correlation.of(r));
        assertThat(result.value()).isCloseTo(ohms, within(0.0005));
        assertThat(result.standardUncertainty()).isCloseTo(uncertainty, within(0.0005));
        assertThat(result.degreesOfFreedom()).isNull();
        double[] each = new double[seen[0].length];
        Arrays.setAll(each, k -> model.value(new double[] {seen[0][k], seen[1][k], seen[2][k]}));
        // the two ways differ by terms of the second order
        double secondWay = Math.sqrt(covariance(each, each));
        assertThat(result.standardUncertainty()).isCloseTo(secondWay, within(0.005 * secondWay));
    }

    private static ModelInput observed(String name, double[] seen) {
        return new ModelInput(name, Spread.normal(mean(seen), Math.sqrt(covariance(seen, seen))));
    }

    private static double mean(double[] seen) {
        double sum = 0;
        for (double value : seen) {
            sum += value;
        }
        return sum / seen.length;
    }

    /** Of the means. */
    private static double covariance(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += (one[i] - mean(one)) * (other[i] - mean(other));
        }
        return sum / (one.length - 1) / one.length;
    }

    /** JCGM 101:2008, 9.3 (from memory): 1.234 mg, 0.0539 mg by the first-order law. */
    @Test
    void massCalibrationToFirstOrder() {
        LinearUncertainty mass = LinearPropagation.of(PublishedExamples.MASS, PublishedExamples.MASS_INPUTS);
        assertThat(mass.value()).isCloseTo(1.234, within(0.0005));
        assertThat(mass.standardUncertainty()).isCloseTo(0.0539, within(0.00005));
    }

    @Test
    void contributionsCarrySensitivityAndShare() {
        List<ModelInput> inputs = List.of(
                new ModelInput("a", Spread.normal(10, 3)),
                new ModelInput("b", Spread.normal(20, 4)),
                new ModelInput("c", Spread.exactly(5)));
        LinearUncertainty result = LinearPropagation.of(x -> x[0] - x[1] + x[2], inputs);
        assertThat(result.value()).isEqualTo(-5);
        assertThat(result.standardUncertainty()).isCloseTo(5, within(1e-12));
        assertThat(result.contributions().get(1).sensitivity()).isCloseTo(-1, within(1e-12));
        assertThat(result.contributions().get(1).uncertainty()).isCloseTo(-4, within(1e-12));
        assertThat(result.contributions().get(0).share()).isCloseTo(9 / 25.0, within(1e-12));
        assertThat(result.contributions().get(2).share()).isZero();
        assertThat(result.coverageFactor(0.95)).isCloseTo(1.959964, within(1e-6));
        assertThat(result.expanded(2)).isCloseTo(10, within(1e-12));
    }

    @Test
    void fullCorrelationAddsOrCancels() {
        List<ModelInput> inputs =
                List.of(new ModelInput("a", Spread.normal(1, 3)), new ModelInput("b", Spread.normal(1, 3)));
        Correlation together = Correlation.of(new double[][] {{1, 1}, {1, 1}});
        assertThat(LinearPropagation.of(x -> x[0] + x[1], inputs, together).standardUncertainty())
                .isCloseTo(6, within(1e-12));
        assertThat(LinearPropagation.of(x -> x[0] - x[1], inputs, together).standardUncertainty())
                .isZero();
    }

    @Test
    void refusesWhatHasNoAnswerOneUncertaintyAway() {
        List<ModelInput> inputs = List.of(new ModelInput("a", Spread.normal(1, 2)));
        assertThatThrownBy(() -> LinearPropagation.of(x -> Math.sqrt(x[0]), inputs))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("spread of the a");
    }

    @Test
    void refusesImpossibleCorrelations() {
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 0.9, -0.9}, {0.9, 1, 0.9}, {-0.9, 0.9, 1}}))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("eigenvalue");
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 0.5}, {0.4, 1}}))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 0.5}, {0.5}}))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> LinearPropagation.of(
                        x -> x[0],
                        List.of(new ModelInput("a", Spread.normal(1, 1), 4.0)),
                        Correlation.of(new double[][] {{1}})))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("degrees of freedom");
    }

    @Test
    void aVarianceBeyondADoubleIsRefused() {
        assertThatThrownBy(() ->
                        LinearPropagation.of(x -> 1e200 * x[0], List.of(new ModelInput("x", Spread.normal(1, 0.1)))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("spreads of the inputs");
    }

    @Test
    void aProbabilityThatRoundsToCertaintyIsRefused() {
        LinearUncertainty exact = new LinearUncertainty(1, 0.1, List.of(), null);
        assertThat(exact.coverageFactor(1 - 1e-15)).isBetween(7.0, 9.0);
        assertThatThrownBy(() -> exact.coverageFactor(Math.nextDown(1.0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("below 1 by more than rounding");
    }

    @Test
    void aCoefficientOfNoInputIsRefused() {
        Correlation correlation = Correlation.of(new double[][] {{1, 0.5}, {0.5, 1}});
        assertThat(correlation.coefficient(0, 1)).isEqualTo(0.5);
        assertThatThrownBy(() -> correlation.coefficient(0, 2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> correlation.coefficient(-1, 0)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void whatCannotBeWrittenDownIsRefused() {
        for (double[] bad :
                new double[][] {{Double.NaN, 1, 5}, {1, -1, 5}, {1, Double.POSITIVE_INFINITY, 5}, {1, 1, Double.NaN}}) {
            assertThatThrownBy(() -> new LinearUncertainty(bad[0], bad[1], List.of(), bad[2]))
                    .isInstanceOf(OutOfRangeException.class);
        }
        LinearUncertainty wide = new LinearUncertainty(1, 1e308, List.of(), null);
        assertThatThrownBy(() -> wide.expanded(2)).isInstanceOf(OutOfRangeException.class);
    }
}
