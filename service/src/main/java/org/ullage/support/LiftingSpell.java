package org.ullage.support;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/** How long the lifting goes on, with the frequency multipliers FM of the lifting equation. */
public enum LiftingSpell {
    /** Up to one hour, with enough rest after it. The removal of one vessel is this. */
    UP_TO_1_HOUR(
            new double[] {1, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, 0, 0, 0},
            new double[] {1, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, .34, .31, .28},
            LiftingSpell.table()),
    /** One to two hours. */
    UP_TO_2_HOURS(
            new double[] {.95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, 0, 0, 0, 0, 0},
            new double[] {.95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, .23, .21, 0, 0, 0},
            LiftingSpell.table()),
    /** Two to eight hours. */
    UP_TO_8_HOURS(
            new double[] {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, 0, 0, 0, 0, 0, 0, 0},
            new double[] {.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0},
            LiftingSpell.table());

    /** Lifts a minute of the columns; the source is that of the table. */
    private static final List<Double> FREQUENCIES =
            listed(List.of(0.2, 0.5, 1., 2., 3., 4., 5., 6., 7., 8., 9., 10., 11., 12., 13., 14., 15.), table());

    @SuppressWarnings("ImmutableEnumChecker") // never written to
    private final double[] low;

    @SuppressWarnings("ImmutableEnumChecker") // never written to
    private final double[] high;

    @SuppressWarnings("ImmutableEnumChecker") // a Source is an immutable record
    private final Source source;

    LiftingSpell(double[] low, double[] high, Source source) {
        this.low = low;
        this.high = high;
        this.source = source;
    }

    private static List<Double> listed(List<Double> frequencies, Source unused) {
        return frequencies;
    }

    private static Source table() {
        return Source.fromMemory(Niosh.TITLE, "Table 5, frequency multiplier");
    }

    /**
     * The frequency multiplier; between two rows of the table that of the higher frequency.
     *
     * @param liftsPerMinute zero or more
     * @param handsHigh whether the hands are 75 cm (30 in) or more above the floor
     * @return FM; 0 above 15 lifts a minute
     * @throws OutOfRangeException if the frequency is negative or not finite
     */
    public double multiplier(double liftsPerMinute, boolean handsHigh) {
        Inputs.requireWithin("lifts per minute", liftsPerMinute, 0, Double.MAX_VALUE, "count the lifts of 15 minutes");
        for (int i = 0; i < FREQUENCIES.size(); i++) {
            if (liftsPerMinute <= FREQUENCIES.get(i)) {
                return handsHigh ? high[i] : low[i];
            }
        }
        return 0;
    }

    /**
     * Where the multipliers come from.
     *
     * @return their source
     */
    public Source source() {
        return source;
    }
}
