package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.ullage.report.Ticks.Tick;

class NumberTicksTest {

    @Property
    void coverTheDataEvenlyByRoundSteps(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(4) double one,
            @ForAll @DoubleRange(min = 0.0001, max = 1e6) @Scale(4) double span,
            @ForAll @IntRange(min = 2, max = 12) int most) {
        List<Tick> ticks =
                NumberTicks.covering(new Extent(one, one + span), most).list();
        assertThat(ticks).hasSizeBetween(2, most + 1);
        assertThat(ticks.get(0).value()).isLessThanOrEqualTo(one);
        assertThat(ticks.get(ticks.size() - 1).value()).isGreaterThanOrEqualTo(one + span);
        BigDecimal step = label(ticks.get(1)).subtract(label(ticks.get(0))).stripTrailingZeros();
        assertThat(step.unscaledValue().intValueExact()).isIn(1, 2, 5);
        for (int i = 0; i < ticks.size(); i++) {
            assertThat(label(ticks.get(i)).subtract(label(ticks.get(0))))
                    .isEqualByComparingTo(step.multiply(BigDecimal.valueOf(i)));
            assertThat(ticks.get(i).value()).isEqualTo(label(ticks.get(i)).doubleValue() + 0.0);
        }
        // At least two fifths of what is shown is data, less what the two ends may add.
        assertThat(span).isGreaterThan(step.doubleValue() * (ticks.size() - 3) - 1e-9);
    }

    private static BigDecimal label(Tick tick) {
        return new BigDecimal(tick.label());
    }

    @Example
    void labelsOfOneAxisHaveTheSamePlaces() {
        assertThat(labels(0.31, 2.4, 5)).containsExactly("0.0", "0.5", "1.0", "1.5", "2.0", "2.5");
        assertThat(labels(-1, 1, 2)).containsExactly("-1", "0", "1");
        assertThat(labels(0, 2.5e12, 3)).containsExactly("0", "1E+12", "2E+12", "3E+12");
        assertThat(labels(99, 101, 4)).containsExactly("99.0", "99.5", "100.0", "100.5", "101.0");
    }

    private static List<String> labels(double low, double high, int most) {
        return NumberTicks.covering(new Extent(low, high), most).list().stream()
                .map(Tick::label)
                .toList();
    }
}
