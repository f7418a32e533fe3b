package org.ullage.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConstantTest {

    private static final Source SOURCE = Source.published("a book", "p. 1");

    @ParameterizedTest
    @CsvSource({
        "9.80665, m/s2, 9.80665 m/s2",
        "1000, kg/m3, 1000 kg/m3",
        "101325, Pa, 101325 Pa",
        "0, degC, 0 degC",
        "-0.0466, 1, -0.0466",
        "0.5, 1, 0.5",
        "0.0000065, 1/degF, 0.0000065 1/degF",
        "0.000000012, 1, 1.2E-8",
        "0.14632971213167, 1, 0.14632971213167",
    })
    void allDigitsAndTheUnitWhereThereIsOne(double value, String unit, String text) {
        assertThat(new Constant("k", value, unit, SOURCE).text()).isEqualTo(text);
    }

    @Test
    void theWholeLineEndsWithTheSource() {
        assertThat(new Constant("g_n", 9.80665, "m/s2", SOURCE))
                .hasToString("g_n = 9.80665 m/s2 [PUBLISHED] a book, p. 1");
        assertThat(new Constant("e", 0.31, "1", SOURCE)).hasToString("e = 0.31 [PUBLISHED] a book, p. 1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void finiteOnly(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Constant("k", value, "1", SOURCE))
                .withMessage("constant k must be finite; it was " + value);
    }
}
