package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LikelihoodTableTest {

    @Test
    void priorsAddUpToOne() {
        assertThat(Arrays.stream(Hypothesis.values())
                        .mapToDouble(LikelihoodTable::prior)
                        .sum())
                .isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource
    void ofEachInspectionOneSignIsTrue(Inspection inspection) {
        for (Hypothesis hypothesis : Hypothesis.values()) {
            assertThat(Arrays.stream(Sign.values())
                            .filter(sign -> sign.inspection() == inspection)
                            .mapToDouble(sign -> LikelihoodTable.of(sign, hypothesis))
                            .sum())
                    .as("%s where it is %s", inspection, hypothesis)
                    .isCloseTo(1, within(1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource
    void noSignIsImpossible(Sign sign) {
        for (Hypothesis hypothesis : Hypothesis.values()) {
            assertThat(LikelihoodTable.of(sign, hypothesis)).isBetween(0.001, 0.999);
        }
    }

    @Test
    void separationIsNothingFromItselfAndMuchWhereSignsDiffer() {
        assertThat(LikelihoodTable.separation(Inspection.FEED, Hypothesis.HEALTHY, Hypothesis.HEALTHY))
                .isZero();
        assertThat(LikelihoodTable.separation(Inspection.FEED, Hypothesis.HEALTHY, Hypothesis.FEED_PASSING))
                .isCloseTo(0.86, within(1e-12));
    }
}
