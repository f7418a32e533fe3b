package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Designed for 10 to 65 degC, the thermometer right to 1 K. */
class WeighingTest {

    private static Clue temperatures(double cold, double hot) {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, cold), SomeSystem.reading(2, hot));
        return new Weighing(SomeSystem.SMALL, evidence).clues().get(2);
    }

    @ParameterizedTest
    @CsvSource({
        "20, 60, temperatures within the design range",
        "10, 65, temperatures within the design range",
        "20, 66, a loop hotter than its design",
        "9, 65, a loop colder than its design",
        "9, 66, temperatures outside the design range"
    })
    void temperaturesAreHeldAgainstTheDesign(double cold, double hot, String words) {
        assertThat(temperatures(cold, hot).words()).isEqualTo(words);
    }

    /** Far outside the design one stray reading in twenty is left to the other faults. */
    @Test
    void aTemperatureOutsideTheDesignSpeaksAgainstTheRest() {
        assertThat(temperatures(20, 60).of(Hypothesis.HEALTHY)).isCloseTo(1, within(1e-9));
        assertThat(temperatures(20, 60).of(Hypothesis.HOTTER_THAN_DESIGNED)).isCloseTo(0, within(1e-9));
        assertThat(temperatures(20, 90).of(Hypothesis.HEALTHY)).isCloseTo(0.05, within(1e-9));
        assertThat(temperatures(20, 90).of(Hypothesis.HOTTER_THAN_DESIGNED)).isCloseTo(1, within(1e-9));
        assertThat(temperatures(2, 60).of(Hypothesis.HEALTHY)).isCloseTo(0.05, within(1e-9));
        assertThat(temperatures(2, 60).of(Hypothesis.COLDER_THAN_DESIGNED)).isCloseTo(1, within(1e-9));
        assertThat(temperatures(2, 90).of(Hypothesis.HEALTHY)).isCloseTo(0.0025, within(1e-9));
        assertThat(temperatures(10, 60).of(Hypothesis.COLDER_THAN_DESIGNED)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void theGasLeftOverFromTheSwingAddsUpToOne() {
        Weighing weighing = new Weighing(SomeSystem.SMALL, SomeSystem.rising(2.713));
        double[] gas = weighing.gasAfterSwing(Hypothesis.LOW_CHARGE);
        double sum = 0;
        int likeliest = 0;
        for (int i = 0; i < gas.length; i++) {
            sum += gas[i];
            likeliest = gas[i] > gas[likeliest] ? i : likeliest;
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        // half of the gas by hand, see SwingModelTest
        assertThat(GasPrior.share(likeliest)).isCloseTo(0.5, within(0.02));
    }

    /** A reading that no sound charge explains leaves what was expected before. */
    @Test
    void anImpossibleSwingLeavesThePrior() {
        Weighing weighing = new Weighing(SomeSystem.SMALL, SomeSystem.rising(50));
        assertThat(weighing.gasAfterSwing(Hypothesis.HEALTHY)).containsExactly(GasPrior.weights(Hypothesis.HEALTHY));
    }
}
