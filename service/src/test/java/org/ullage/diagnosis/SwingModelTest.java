package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SwingModelTest {

    private static final double AIR = 101_325;

    private final SwingModel model = new SwingModel(SomeSystem.SMALL, 1e7);
    private final Swing swing = new Swing(130_000 + AIR, 293.15, 333.15, 1, 1, 1);
    private final double gas = SomeSystem.SMALL.gasSi();

    /** By hand: 12 L x 2.01325 bar = 24.159 L bar; 10.4437 L at 2.31325 bar; 100 L x (1.03/1.01 - 1) = 1.9802 L go in. */
    @Test
    void soundVessel() {
        assertThat(model.after(swing, gas, false)).isCloseTo(24.159 / (10.443_748 - 1.980_198) * 1e5, within(2.0));
    }

    @Test
    void halfOfTheGasLeavesMoreThanTwiceTheSwing() {
        assertThat(model.after(swing, gas / 2, false)).isCloseTo(12.0795 / (5.221_874 - 1.980_198) * 1e5, within(2.0));
    }

    @Test
    void aGasSpaceThatClosesEndsAtTheCeiling() {
        assertThat(model.after(swing, gas * 0.1, false)).isEqualTo(1e7);
    }

    /** Above the cold pressure the charge fills the vessel: the gas is 12 L, whatever the loop's pressure. */
    @Test
    void gasInTheVesselCannotFillMoreThanTheVessel() {
        double over = gas * 1.5;
        assertThat(model.after(swing, over, false)).isCloseTo(over / (0.012 - 0.001_980_198), within(2.0));
        assertThat(model.after(swing, over, true))
                .isCloseTo(over / (over / (130_000 + AIR) - 0.001_980_198), within(2.0));
    }

    @Test
    void warmerGasAndMoreContentsRaiseThePressure() {
        double plain = model.after(swing, gas, false);
        assertThat(model.after(swing.shifted(SwingInput.HOT_GAS_RATIO, 0.01), gas, false))
                .isCloseTo(plain * 1.01, within(0.01));
        assertThat(model.after(swing.shifted(SwingInput.CONTENTS, 0.1), gas, false))
                .isGreaterThan(plain);
        assertThat(model.after(swing.shifted(SwingInput.HOT_TEMPERATURE, 1), gas, false))
                .isGreaterThan(plain);
        assertThat(model.after(swing.shifted(SwingInput.COLD_TEMPERATURE, 1), gas, false))
                .isLessThan(plain);
    }
}
