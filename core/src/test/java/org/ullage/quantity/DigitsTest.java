package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DigitsTest {

    @ParameterizedTest
    @CsvSource({
        "0, 4, 0",
        "-0.0, 4, 0",
        "12, 4, 12",
        "3000, 1, 3000",
        "12.340, 6, 12.34",
        "1234.56, 4, 1235",
        "0.00100216, 6, 0.00100216",
        "999.96, 4, 1000",
        "0.125, 2, 0.13",
        "-0.125, 2, -0.13",
        "0.135, 2, 0.14",
        "2.5, 1, 3",
        "9999999999, 10, 9999999999",
        "9999999999, 4, 1E+10",
        "12345678901, 4, 1.235E+10",
        "0.00001, 4, 0.00001",
        "0.00000012, 4, 1.2E-7",
        "4.9E-324, 4, 4.9E-324",
        "1.7976931348623157E308, 17, 1.7976931348623157E+308",
    })
    void roundsHalfUpAndWritesTheShortForm(double number, int digits, String written) {
        assertThat(Digits.significant(number, digits)).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aNumberThatIsNotFiniteIsRefused(double number) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Digits.significant(number, 4))
                .withMessage("only a finite number can be written; it was " + number);
    }

    @Test
    void atLeastOneDigitIsKept() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Digits.significant(12, 0))
                .withMessage("significant digits must be 1 or more; it was 0");
    }
}
