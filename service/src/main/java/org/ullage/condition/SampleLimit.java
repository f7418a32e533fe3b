package org.ullage.condition;

import java.io.Serializable;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

/**
 * A limit of one quantity and what a value outside it calls for. Immutable.
 *
 * @param quantity what it limits
 * @param least lowest good value in the quantity's unit, or null
 * @param most highest good value, or null
 * @param needs traits a loop must have for the limit to apply
 * @param excludes traits a loop must not have
 * @param strict whether a value right at an end counts as outside
 * @param outside the verdict on a value outside
 * @param meaning what it means, for people
 * @param source where the limit comes from
 */
public record SampleLimit(
        SampleQuantity quantity,
        @Nullable Double least,
        @Nullable Double most,
        Set<LoopTrait> needs,
        Set<LoopTrait> excludes,
        boolean strict,
        Verdict outside,
        String meaning,
        Source source)
        implements Serializable {

    /**
     * Checks the ends.
     *
     * @param quantity what it limits
     * @param least lowest good value, or null
     * @param most highest good value, or null
     * @param needs traits a loop must have
     * @param excludes traits a loop must not have
     * @param strict whether a value right at an end counts as outside
     * @param outside the verdict on a value outside
     * @param meaning what it means
     * @param source where the limit comes from
     * @throws OutOfRangeException if both ends are missing or out of order, or an end is not finite
     */
    public SampleLimit {
        needs = LoopTrait.inOrder(needs);
        excludes = LoopTrait.inOrder(excludes);
        double low = least == null ? quantity.least() : least;
        double high = most == null ? quantity.most() : most;
        boolean empty = least == null && most == null;
        if (empty || !(low <= high) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new OutOfRangeException(
                    "limit of " + quantity.word(),
                    empty ? "without an end" : "from " + low + " to " + high,
                    "one finite end or two in order",
                    "take it from the fluid's data sheet");
        }
    }

    /**
     * A limit from the data sheet of the fluid in the loop. It decides before every published one.
     *
     * @param quantity what it limits
     * @param least lowest good value in the quantity's unit, or null
     * @param most highest good value, or null
     * @param outside the verdict on a value outside
     * @param meaning what it means
     * @return the limit
     * @throws OutOfRangeException if both ends are missing or out of order
     */
    public static SampleLimit ofDataSheet(
            SampleQuantity quantity, @Nullable Double least, @Nullable Double most, Verdict outside, String meaning) {
        return new SampleLimit(quantity, least, most, Set.of(), Set.of(), false, outside, meaning, Source.given());
    }

    /**
     * Whether it speaks of a loop.
     *
     * @param traits the loop's
     * @return whether the loop has what it needs and nothing that it excludes
     */
    public boolean appliesTo(Set<LoopTrait> traits) {
        return traits.containsAll(needs) && excludes.stream().noneMatch(traits::contains);
    }

    /**
     * What it says of a value.
     *
     * @param number in the quantity's unit
     * @return {@link Verdict#KEEP} from the least to the most
     */
    public Verdict of(double number) {
        boolean below = least != null && (number < least || (strict && number == least));
        boolean above = most != null && (number > most || (strict && number == most));
        return below || above ? outside : Verdict.KEEP;
    }

    /**
     * The limit for people.
     *
     * @return such as {@code 8.2 to 10}
     */
    public String range() {
        if (least == null) {
            return (strict ? "below " : "at most ") + end(most);
        }
        return most == null
                ? (strict ? "above " : "at least ") + end(least)
                : SampleValue.text(quantity, least).replace(" " + quantity.unit(), "") + " to " + end(most);
    }

    private String end(@Nullable Double end) {
        return end == null ? "" : SampleValue.text(quantity, end);
    }

    /** The traits it asks for, for people; empty if it is general. */
    String where() {
        return needs.stream().sorted().map(LoopTrait::word).collect(Collectors.joining(", "));
    }
}
