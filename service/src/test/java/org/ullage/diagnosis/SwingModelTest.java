package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.method.TestFluid;
import org.ullage.quantity.Volume;

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

    /** 100 L x (1.03/1.01 - 1 - 3 x 11.7e-6 x 40) = 1.8398 L. */
    @Test
    void steelPipeTakesSomeOfTheExpansion() {
        InstalledSystem small = SomeSystem.SMALL;
        InstalledSystem steel = new InstalledSystem(
                Loop.withContents(Volume.litres(100)).steel().filledWith(TestFluid.WATER),
                small.contentsError(),
                small.nominal(),
                small.charge(),
                small.lowestFill(),
                small.highestFill(),
                small.fill(),
                small.relief(),
                small.designCold(),
                small.designHot(),
                small.atmosphere());
        assertThat(new SwingModel(steel, 1e7).expansion(293.15, 2e5, 333.15, 2e5, 1) * 1000)
                .isCloseTo(1.8398, within(1e-4));
    }

    /** Gas a tenth warmer when cold takes 11.488 L; 9.508 L are left for it when hot. */
    @Test
    void gasThatWasWarmerWhenColdTookMoreRoom() {
        Swing warm = new Swing(130_000 + AIR, 293.15, 333.15, 1.1, 1, 1);
        assertThat(model.after(warm, gas, false)).isCloseTo(24.159 / 9.507_924 * 1e5, within(5.0));
    }

    @Test
    void warmerGasAndMoreContentsRaiseThePressure() {
        double plain = model.after(swing, gas, false);
        assertThat(model.after(swing.shifted(SwingInput.HOT_GAS_RATIO, 0.01), gas, false))
                .isCloseTo(plain * 1.01, within(0.01));
        assertThat(model.after(swing.shifted(SwingInput.CONTENTS, 0.1), gas, false))
                .isGreaterThan(plain);
        assertThat(model.after(swing.shifted(SwingInput.COLD_PRESSURE, 1000), gas, false))
                .isGreaterThan(plain);
        assertThat(model.after(swing.shifted(SwingInput.HOT_TEMPERATURE, 1), gas, false))
                .isGreaterThan(plain);
        assertThat(model.after(swing.shifted(SwingInput.COLD_TEMPERATURE, 1), gas, false))
                .isLessThan(plain);
    }
}
