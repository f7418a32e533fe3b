package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What each fault expects of the gas, in hundredths of the charge. */
class GasPriorTest {

    private static double weight(Hypothesis hypothesis, int hundredths) {
        return GasPrior.weights(hypothesis)[hundredths - 1];
    }

    @ParameterizedTest
    @EnumSource
    void addsUpToOne(Hypothesis hypothesis) {
        double sum = 0;
        for (double weight : GasPrior.weights(hypothesis)) {
            assertThat(weight).isNotNegative();
            sum += weight;
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void sharesAreHundredths() {
        assertThat(GasPrior.share(0)).isEqualTo(0.01);
        assertThat(GasPrior.share(GasPrior.points() - 1)).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({
        "WATERLOGGED, 1, 0.1",
        "WATERLOGGED, 10, 0.1",
        "WATERLOGGED, 11, 0",
        "LOW_CHARGE, 10, 0",
        "LOW_CHARGE, 11, 0.0125",
        "LOW_CHARGE, 90, 0.0125",
        "LOW_CHARGE, 91, 0",
        "OVER_CHARGED, 111, 0",
        "AIR_IN_LOOP, 250, 0.007246",
        "AIR_IN_LOOP, 251, 0"
    })
    void eachFaultHasItsRange(Hypothesis hypothesis, int hundredths, double weight) {
        assertThat(weight(hypothesis, hundredths)).isCloseTo(weight, within(1e-6));
    }

    @Test
    void anOverchargeGetsRarerTheLargerItIs() {
        assertThat(weight(Hypothesis.OVER_CHARGED, 120)).isPositive();
        assertThat(weight(Hypothesis.OVER_CHARGED, 135) / weight(Hypothesis.OVER_CHARGED, 120))
                .isCloseTo(Math.exp(-1), within(1e-9));
    }

    /** A sound charge is off by 6 %: at one standard deviation the density has fallen by exp(-1/2). */
    @Test
    void aSoundChargeIsNearlyWhatItWas() {
        assertThat(weight(Hypothesis.HEALTHY, 106) / weight(Hypothesis.HEALTHY, 100))
                .isCloseTo(Math.exp(-0.5), within(1e-9));
        assertThat(weight(Hypothesis.HEALTHY, 94)).isCloseTo(weight(Hypothesis.HEALTHY, 106), within(1e-12));
    }
}
