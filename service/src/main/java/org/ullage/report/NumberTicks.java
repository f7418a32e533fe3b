package org.ullage.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Marks at round numbers: 1, 2 or 5 times a power of ten apart, worked out in decimals so that every machine finds the same. The way is
 * the well-known one of Graphics Gems (Academic Press, 1990), "Nice numbers for graph labels"; from memory.
 */
final class NumberTicks {

    private static final List<BigDecimal> STEPS =
            Stream.of("1", "2", "5").map(BigDecimal::new).toList();

    /** Places behind the point, or zeros before it, up to which a label is written plainly. */
    private static final int PLAIN_DECIMALS = 9;

    private NumberTicks() {}

    /**
     * The finest marks of which there are not too many.
     *
     * @param most intervals, 2 or more
     */
    static Ticks covering(Extent extent, int most) {
        BigDecimal low = new BigDecimal(Double.toString(extent.low()));
        BigDecimal high = new BigDecimal(Double.toString(extent.high()));
        BigDecimal span = high.subtract(low);
        int exponent = span.precision() - span.scale() - 2;
        for (int power = exponent - Integer.toString(most).length(); ; power++) {
            for (BigDecimal digit : STEPS) {
                BigDecimal step = digit.scaleByPowerOfTen(power);
                BigDecimal first = low.divide(step, 0, RoundingMode.FLOOR);
                BigDecimal last = high.divide(step, 0, RoundingMode.CEILING);
                if (last.subtract(first).compareTo(BigDecimal.valueOf(most)) <= 0) {
                    return ticks(first, last, step);
                }
            }
        }
    }

    private static Ticks ticks(BigDecimal first, BigDecimal last, BigDecimal step) {
        List<Ticks.Tick> ticks = new ArrayList<>();
        for (BigDecimal i = first; i.compareTo(last) <= 0; i = i.add(BigDecimal.ONE)) {
            BigDecimal value = i.multiply(step);
            ticks.add(new Ticks.Tick(value.doubleValue() + 0.0, label(value, step)));
        }
        return new Ticks(ticks);
    }

    /** All labels of an axis have the same places behind the point. */
    private static String label(BigDecimal value, BigDecimal step) {
        int decimals = Math.max(0, step.scale());
        int zeros = value.precision() - value.scale();
        return decimals <= PLAIN_DECIMALS && zeros <= PLAIN_DECIMALS
                ? value.setScale(decimals).toPlainString()
                : value.stripTrailingZeros().toString();
    }
}
