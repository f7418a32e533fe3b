package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SwingLikelihoodTest {

    private static double density(double hotBar, int hundredths) {
        return 1e5 * new SwingLikelihood(SomeSystem.SMALL, SomeSystem.rising(hotBar)).of(false)[hundredths - 1];
    }

    /**
     * The parts of GasLeftTest, 0.0745 of the gas in all, as a pressure: times 1/p_1 - 1/p_2 and p_2 squared, 0.668 bar, that is
     * 0.0497 bar. To first order, so to 3 %.
     */
    @Test
    void aSoundVesselIsReadToItsUncertainty() {
        double deviation = 0.07446 * 0.66783;
        double most = 1 / (deviation * Math.sqrt(2 * Math.PI));
        assertThat(density(1.8412, 100)).isCloseTo(most, within(0.03 * most));
        assertThat(density(1.8412 + deviation, 100)).isCloseTo(most * Math.exp(-0.5), within(0.03 * most));
    }

    /** A valve of 3 bar that lifted leaves 2.4 to 3.3 bar: 0.45/1.732 bar and the gauge's 0.0231 bar are 0.2608 bar. */
    @Test
    void aValveThatLiftedLeavesItsOwnPressure() {
        double most = 1 / (0.2608 * Math.sqrt(2 * Math.PI));
        assertThat(density(3.0, 1)).isCloseTo(most, within(1e-3));
        assertThat(density(3.2608, 1)).isCloseTo(most * Math.exp(-0.5), within(1e-3));
    }

    @Test
    void aWideSwingTellsAndASmallOneDoesNot() {
        assertThat(new SwingLikelihood(SomeSystem.SMALL, SomeSystem.rising(1.841)).tells())
                .isTrue();
        Evidence small = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.34, 24));
        assertThat(new SwingLikelihood(SomeSystem.SMALL, small).tells()).isFalse();
    }
}
