package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;

/** Charged to 1 bar, 2.01325 bar absolute, and measured to 0.04 bar at 20 degC. */
class ChargeLikelihoodTest {

    private static ChargeLikelihood measured(double bar) {
        return new ChargeLikelihood(
                SomeSystem.SMALL,
                new MeasuredCharge(GaugePressure.bar(bar), Temperature.celsius(20), PressureDifference.bar(0.04)));
    }

    /**
     * With air in the loop the vessel has its charge, give or take 6 %: at 1 bar the gauge adds 1.147 % and the shell 1 %, 6.19 % in
     * all; at 0.8 bar, 0.9007 of the charge, 1.147 % and 0.9007 %, 6.175 %, and it is 1.609 deviations away. One in 500 is left to
     * surprises.
     */
    @ParameterizedTest
    @CsvSource({"1, 6.4342", "0.8, 1.7698", "0.1, 0.002"})
    void airInTheLoopLeavesTheChargeAsItWas(double bar, double density) {
        double[] unused = new double[GasPrior.points()];
        assertThat(measured(bar).of(Hypothesis.AIR_IN_LOOP, unused)).isCloseTo(density, within(0.002));
    }

    @Test
    void theWordsGiveTheReading() {
        assertThat(measured(0.3).words()).isEqualTo("a measured charge of 0.3 bar (4.351 psi) at 20 degC (68 degF)");
    }
}
