package org.ullage.loop;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Provenance;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.workings.Caution;

/**
 * A quick estimate of contents from boiler output and the kind of emitters, as a range: common practice, for want of a take-off.
 * Immutable; every step returns a new estimate.
 */
public final class QuickEstimate implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final Source OPEN_VENTED_RULE = new Source(
            Provenance.COMMON_PRACTICE,
            "field rule, open vented systems hold 10 % more",
            "how-to sheet of a water-treatment firm on estimating the volume of a system",
            "read in full; no test data");

    private static final Constant OPEN_VENTED = new Constant("open vented", 0.1, "1", OPEN_VENTED_RULE);

    private static final Caution USE_THE_HIGH_END = new Caution(
            "An estimate by rule of thumb: size for its high end, because a vessel that is too large only costs money and one that"
                    + " is too small lifts the relief valve; meter the fill and correct it.",
            Source.commonPractice("contents by rule of thumb differ by a factor of 1.5 and more"));

    @SuppressWarnings("serial") // the lists of List.copyOf and Stream.toList are serializable
    private final List<ContentsItem> items;

    private QuickEstimate(List<ContentsItem> items) {
        this.items = items;
    }

    /**
     * Begins with the whole system on a boiler, or the part of its output that goes to one kind of emitters.
     *
     * @param output boiler output, above zero
     * @param emitters the kind of emitters
     * @return the estimate so far
     * @throws OutOfRangeException if the output is zero or negative
     */
    public static QuickEstimate of(Power output, EmitterType emitters) {
        return of(emitters.item(output));
    }

    /**
     * Begins with any other rule of thumb, such as one of {@link AreaRule} or {@link PieceRule}.
     *
     * @param item a line
     * @return the estimate so far
     */
    public static QuickEstimate of(ContentsItem item) {
        return new QuickEstimate(List.of(item));
    }

    /**
     * Adds the part of the output that goes to another kind of emitters.
     *
     * @param output boiler output, above zero
     * @param emitters the kind of emitters
     * @return the estimate with it
     * @throws OutOfRangeException if the output is zero or negative
     */
    public QuickEstimate and(Power output, EmitterType emitters) {
        return and(emitters.item(output));
    }

    /**
     * Adds something the rules don't cover, such as a buffer.
     *
     * @param item a line
     * @return the estimate with it
     */
    public QuickEstimate and(ContentsItem item) {
        return new QuickEstimate(Stream.concat(items.stream(), Stream.of(item)).toList());
    }

    /**
     * Adds what an open vented system holds more than a sealed one, on all that has been added so far.
     *
     * @return the estimate with a tenth more
     */
    public QuickEstimate openVented() {
        VolumeRange more = contents().range().times(OPEN_VENTED.value());
        return and(ContentsItem.of("open vented, 10 % more", Amount.of(1), more, OPEN_VENTED.source()));
    }

    /**
     * The contents as a range.
     *
     * @return low, typical and high
     */
    public Contents contents() {
        return new Contents(ContentsBasis.ESTIMATED, items, List.of(USE_THE_HIGH_END));
    }
}
