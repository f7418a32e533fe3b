package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DesignCheckTest {

    /**
     * 6 L by hand: 12.0795 L bar are 5.4578 L at the lowest fill of 2.21325 bar; 100 L x (1.0325/1.01 - 1) = 2.2277 L go in up to 65
     * degC: 3.7397 bar, 2.726 bar gauge, to the root of 0.0577 and 0.0452 bar squared, 0.0733 bar. The valve may open from 2.9 bar
     * (2.37 deviations away, 0.9 %), and 90 % of its setting are 2.7 bar (0.36 deviations, 64.1 %). The three priors are 0.59.
     */
    @Test
    void aVesselNearItsLimitByHand() {
        DesignCheck check = new DesignCheck(SomeSystem.withVessel(6));
        assertThat(check.prior(Hypothesis.UNDERSIZED)).isCloseTo(0.59 * 0.0090, within(2e-4));
        assertThat(check.prior(Hypothesis.VALVE_MARGIN_SMALL)).isCloseTo(0.59 * (0.641 - 0.009), within(2e-3));
        assertThat(check.prior(Hypothesis.HEALTHY)).isCloseTo(0.59 * (1 - 0.641), within(2e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 5.5, 6, 6.5, 12})
    void whetherItIsLargeEnoughOnlySharesOutThePriors(double litres) {
        DesignCheck check = new DesignCheck(SomeSystem.withVessel(litres));
        assertThat(check.prior(Hypothesis.HEALTHY)
                        + check.prior(Hypothesis.UNDERSIZED)
                        + check.prior(Hypothesis.VALVE_MARGIN_SMALL))
                .isCloseTo(0.52 + 0.05 + 0.02, within(1e-12));
        assertThat(check.prior(Hypothesis.LOW_CHARGE)).isEqualTo(0.14);
    }
}
