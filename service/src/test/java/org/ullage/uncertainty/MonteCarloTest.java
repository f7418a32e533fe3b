package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;

class MonteCarloTest {

    private static final int MANY = 1_000_000;

    /** JCGM 101:2008, 9.2.2 (from memory): four normal inputs, u = 2.00, 95 % from -3.92 to 3.92. */
    @Test
    void sumOfFourNormals() {
        MonteCarloResult sum =
                MonteCarlo.of(PublishedExamples::sum, PublishedExamples.four(Spread.normal(0, 1)), MANY, 1);
        assertThat(sum.mean()).isCloseTo(0, within(0.01));
        assertThat(sum.standardUncertainty()).isCloseTo(2.00, within(0.01));
        assertThat(sum.quantile(0.025)).isCloseTo(-3.92, within(0.02));
        assertThat(sum.quantile(0.975)).isCloseTo(3.92, within(0.02));
    }

    /** JCGM 101:2008, 9.2.3 (from memory): four rectangular inputs of the same uncertainty, 95 % from -3.88 to 3.88. */
    @Test
    void sumOfFourRectangles() {
        double a = Math.sqrt(3);
        MonteCarloResult sum =
                MonteCarlo.of(PublishedExamples::sum, PublishedExamples.four(Spread.uniform(-a, a)), MANY, 1);
        assertThat(sum.standardUncertainty()).isCloseTo(2.00, within(0.01));
        assertThat(sum.quantile(0.025)).isCloseTo(-3.88, within(0.02));
        assertThat(sum.quantile(0.975)).isCloseTo(3.88, within(0.02));
        assertThat(sum.shares()).allSatisfy(share -> assertThat(share).isCloseTo(0.25, within(0.02)));
    }

    /** JCGM 101:2008, table 8 (from memory): 1.234 mg, 0.0754 mg, 95 % from 1.084 to 1.385 mg, where the first order says 0.0539 mg. */
    @Test
    void massCalibration() {
        MonteCarloResult mass = MonteCarlo.of(PublishedExamples.MASS, PublishedExamples.MASS_INPUTS, MANY, 1);
        assertThat(mass.mean()).isCloseTo(1.234, within(0.0005));
        assertThat(mass.standardUncertainty()).isCloseTo(0.0754, within(0.0003));
        assertThat(mass.quantile(0.025)).isCloseTo(1.084, within(0.002));
        assertThat(mass.quantile(0.975)).isCloseTo(1.385, within(0.002));
    }

    /** The spread is 6e-7 of the value: bins that follow the value instead of the spread would see nothing. */
    @Test
    void endGaugeAgreesWithTheLinearLaw() {
        List<ModelInput> inputs = PublishedExamples.END_GAUGE_INPUTS;
        LinearUncertainty linear = LinearPropagation.of(PublishedExamples.END_GAUGE, inputs);
        MonteCarloResult drawn = MonteCarlo.of(PublishedExamples.END_GAUGE, inputs, MANY, 1);
        double u = linear.standardUncertainty();
        assertThat(drawn.mean()).isCloseTo(linear.value(), within(0.01 * u));
        // the products of zero-mean inputs, which the first order does not see, bring u from 32 to 34 nm (JCGM
        // 100:2008, H.1.7)
        assertThat(drawn.standardUncertainty()).isCloseTo(34e-9, within(0.5e-9));
        assertThat(drawn.quantile(0.5)).isCloseTo(linear.value(), within(0.02 * u));
    }

    @Test
    void moreDrawsBeginWithTheSameDraws() {
        List<Double> few = new ArrayList<>();
        List<Double> many = new ArrayList<>();
        List<ModelInput> inputs = List.of(new ModelInput("a", Spread.normal(0, 1)));
        MonteCarlo.of(x -> keep(few, x[0]), inputs, 1500, 9);
        MonteCarlo.of(x -> keep(many, x[0]), inputs, 40_000, 9);
        assertThat(few).hasSize(1500);
        assertThat(many).hasSize(40_000).startsWith(few.toArray(Double[]::new));
    }

    private static double keep(List<Double> kept, double value) {
        kept.add(value);
        return value;
    }

    @Test
    void anotherSpreadOnOneInputLeavesTheOthersAlone() {
        List<Double> narrow = new ArrayList<>();
        List<Double> certain = new ArrayList<>();
        ModelInput second = new ModelInput("second", Spread.uniform(0, 1));
        MonteCarlo.of(x -> keep(narrow, x[1]), List.of(new ModelInput("a", Spread.normal(0, 1)), second), 1000, 9);
        MonteCarlo.of(x -> keep(certain, x[1]), List.of(new ModelInput("a", Spread.exactly(0)), second), 1000, 9);
        assertThat(certain).isEqualTo(narrow);
    }

    @Test
    void sharesSeeWhatIsNotMonotone() {
        List<ModelInput> inputs = List.of(
                new ModelInput("bent", Spread.uniform(-1, 1)),
                new ModelInput("straight", Spread.uniform(-1, 1)),
                new ModelInput("without effect", Spread.normal(0, 1)),
                new ModelInput("certain", Spread.exactly(1)));
        MonteCarloResult result = MonteCarlo.of(x -> x[0] * x[0] + x[1] * x[3], inputs, 16_384, 2);
        double bent = 4.0 / 45; // variance of x^2 for x uniform on -1..1
        double straight = 1.0 / 3;
        assertThat(result.shares().get(0)).isCloseTo(bent / (bent + straight), within(0.015));
        assertThat(result.shares().get(1)).isCloseTo(straight / (bent + straight), within(0.015));
        assertThat(result.shares().get(2)).isCloseTo(0, within(0.01));
        assertThat(result.shares().get(3)).isZero();
    }

    @Test
    void refusedDrawsAreCountedByReason() {
        List<ModelInput> inputs = List.of(new ModelInput("a", Spread.uniform(0, 1)));
        MonteCarloResult result = MonteCarlo.of(
                x -> {
                    if (x[0] < 0.25) {
                        throw new OutOfRangeException("charge", "high", "lower", "lower it");
                    }
                    return x[0] < 0.5 ? Double.NaN : x[0];
                },
                inputs,
                100_000,
                5);
        assertThat(result.refusals()).containsOnlyKeys("charge", "no finite answer");
        assertThat(result.refusals().get("charge")).isBetween(24_400L, 25_600L);
        assertThat(result.answered()
                        + result.refusals().values().stream().mapToLong(n -> n).sum())
                .isEqualTo(result.draws());
        assertThat(result.least()).isGreaterThanOrEqualTo(0.5);
    }

    @Test
    void refusesWhenNothingHasAnAnswer() {
        List<ModelInput> inputs = List.of(new ModelInput("a", Spread.uniform(0, 1)));
        assertThatThrownBy(() -> MonteCarlo.of(x -> Double.NaN, inputs, 2000, 5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("draws with an answer");
        assertThatThrownBy(() -> MonteCarlo.of(x -> x[0], inputs, 10, 5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("number of draws");
    }

    @Test
    void probabilitiesOfNothingAndOfEverythingAreRefused() {
        MonteCarloResult result = MonteCarlo.of(x -> x[0], List.of(new ModelInput("a", Spread.uniform(0, 1))), 2000, 5);
        assertThatThrownBy(() -> result.quantile(0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> result.quantile(1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> result.quantile(Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> result.shareUpTo(Double.NaN)).isInstanceOf(OutOfRangeException.class);
    }
}
