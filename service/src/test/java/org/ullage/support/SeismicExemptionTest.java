package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;

class SeismicExemptionTest {

    /** ASCE 7-05, 13.1.4. */
    @ParameterizedTest
    @CsvSource({
        "A, 1.5, false, 10, 5000, true",
        "B, 1.5, false, 10, 5000, true",
        "C, 1, false, 10, 5000, true",
        "C, 1.5, true, 1, 10, false",
        "D, 1, true, 4, 400, true",
        "D, 1, true, 4.1, 400, false",
        "E, 1, true, 4, 401, false",
        "E, 1, true, 10, 20, true",
        "F, 1, false, 1, 20, false",
        "F, 1.5, true, 1, 20, false",
    })
    void rules(
            SeismicCategory category, double importance, boolean flexible, double feet, double pounds, boolean exempt) {
        SeismicExemption answer =
                SeismicExemption.asce705(category, importance, flexible, Length.feet(feet), Mass.pounds(pounds));
        assertThat(answer.exempt()).isEqualTo(exempt);
        assertThat(answer.reason()).isNotBlank();
    }
}
