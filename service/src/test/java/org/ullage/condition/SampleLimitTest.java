package org.ullage.condition;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SampleLimitTest {

    @Test
    void aRangePrintsItsUnitOnce() {
        SampleLimit limit = SampleLimit.ofDataSheet(SampleQuantity.GLYCOL, 25.0, 60.0, Verdict.TREAT, "x");
        assertThat(limit.range()).isEqualTo("25 to 60 vol%");
    }

    @Test
    void aSingleGoodValueIsARange() {
        SampleLimit limit = SampleLimit.ofDataSheet(SampleQuantity.PH, 7.0, 7.0, Verdict.TREAT, "neutral");
        assertThat(limit.of(7.0)).isEqualTo(Verdict.KEEP);
        assertThat(limit.of(7.01)).isEqualTo(Verdict.TREAT);
        assertThat(limit.of(6.99)).isEqualTo(Verdict.TREAT);
    }
}
