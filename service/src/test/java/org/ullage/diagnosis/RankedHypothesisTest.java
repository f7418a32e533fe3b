package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RankedHypothesisTest {

    @ParameterizedTest
    @CsvSource({
        "0.999, over 99 %",
        "0.9901, over 99 %",
        "0.99, 99 %",
        "0.734, 73 %",
        "0.01, 1 %",
        "0.0099, under 1 %",
        "0, under 1 %"
    })
    void neitherCertaintyNorNothingIsClaimed(double probability, String percent) {
        assertThat(new RankedHypothesis(Hypothesis.HEALTHY, probability, List.of(), List.of()).percent())
                .isEqualTo(percent);
    }

    @Test
    void theTextGivesTheReasons() {
        RankedHypothesis ranked =
                new RankedHypothesis(Hypothesis.WATERLOGGED, 0.7, List.of("shell dull all over"), List.of("a swing"));
        assertThat(ranked.text())
                .isEqualTo("waterlogged, 70 %\n    for:     shell dull all over\n    against: a swing\n");
    }
}
