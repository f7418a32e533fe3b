package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class GasLeftTest {

    /** The hot pressure of a sound vessel by hand is 24.159 / 8.46355 = 2.854 bar abs, 1.841 bar gauge. */
    @Test
    void allOfTheGas() {
        GasLeft left = GasLeft.of(SomeSystem.SMALL, SomeSystem.rising(1.8412)).orElseThrow();
        assertThat(left.share()).isCloseTo(1, within(0.0005));
        assertThat(left.charge().in(Units.BAR)).isCloseTo(1.0, within(0.001));
        assertThat(left.waterWhenCold().in(Units.LITRE)).isCloseTo(12 - 10.4437, within(0.005));
        assertThat(left.expansion().in(Units.LITRE)).isCloseTo(1.9802, within(0.0001));
        assertThat(left.step().substituted(UnitSystem.SI)).contains("1.9802 L").contains("12 L");
    }

    @Test
    void halfOfTheGas() {
        GasLeft left = GasLeft.of(SomeSystem.SMALL, SomeSystem.rising(2.7130)).orElseThrow();
        assertThat(left.share()).isCloseTo(0.5, within(0.0005));
        assertThat(left.text(UnitSystem.SI)).startsWith("gas left: 50 % of the charge");
    }

    /**
     * Parts by hand at 2.31325 and 2.8545 bar abs, all relative: gap 0.08196; cold gauge 0.02309/(5.3511 x 0.08196) = 0.05266; hot
     * gauge 0.02309/(8.1482 x 0.08196) = 0.03458; temperatures 0.57735/40 x 1.03/1.01 and x 1; contents 0.03/1.732 = 0.01732; gas
     * 0.006822/(2.8545 x 0.08196) = 0.02916.
     */
    @Test
    void itsUncertaintyIsTheRootOfTheSquaresOfItsParts() {
        GasLeft left = GasLeft.of(SomeSystem.SMALL, SomeSystem.rising(1.8412)).orElseThrow();
        double cold = 0.57735 / 40 * 1.03 / 1.01;
        double hot = 0.57735 / 40;
        double relative = Math.sqrt(0.05266 * 0.05266
                + 0.03458 * 0.03458
                + cold * cold
                + hot * hot
                + 0.01732 * 0.01732
                + 0.02916 * 0.02916);
        assertThat(left.uncertainty().in(Units.BAR)).isCloseTo(2.01325 * relative, within(0.002));
    }

    @Test
    void noRiseGivesNoGas() {
        assertThat(GasLeft.of(SomeSystem.SMALL, SomeSystem.rising(1.3))).isEmpty();
        assertThat(GasLeft.of(SomeSystem.SMALL, SomeSystem.rising(1.1))).isEmpty();
    }
}
