package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.published.Methods;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselType;

/** How the expansion conventions say themselves and which steps they show. */
class ExpansionRuleTest {

    @Test
    void mixturesShowTheirOwnDensitiesAndWaterTheRulesFormula() {
        assertThat(workings(Methods.EN_12828, TestFluid.WATER))
                .contains("c0 + ")
                .doesNotContain("specific volume of");
        assertThat(workings(Methods.EN_12828, TestFluid.MIXTURE))
                .contains("specific volume of test mixture")
                .doesNotContain("c0 + ");
    }

    @Test
    void balanceShowsTheThreeStatesItWeighs() {
        assertThat(workings(Methods.MASS_BALANCE, TestFluid.WATER))
                .contains("v_v * (1 / v_1 - (1 + 3 * alpha * dt) / v_2)")
                .contains("test water, cold", "test water, hot", "test water, in the vessel");
    }

    @Test
    void rulesSayThemselvesInWords() {
        assertThat(Methods.ASME_IV.expansion().toString())
                .endsWith("(T in degF)")
                .contains(" * T");
        assertThat(Methods.EN_12828.expansion().toString()).contains("(T in degC); for mixtures ");
        assertThat(Methods.IRC_M2003.expansion().toString()).endsWith(" whatever the temperature");
        assertThat(Methods.MASS_BALANCE.expansion().toString()).startsWith("mass that leaves the loop");
    }

    private static String workings(Method method, TestFluid fluid) {
        return method.size(Jobs.steel(fluid, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)))
                .workings()
                .text(UnitSystem.SI);
    }
}
