package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Compares a computed number with a printed one, digit by digit. */
final class PrintedWaterValue {

    private PrintedWaterValue() {}

    /** The number, rounded to the last digit that is printed, must be the printed one. */
    static void assertRoundsTo(BigDecimal printed, double computed) {
        assertThat(new BigDecimal(computed).setScale(printed.scale(), RoundingMode.HALF_UP))
                .isEqualByComparingTo(printed);
    }
}
