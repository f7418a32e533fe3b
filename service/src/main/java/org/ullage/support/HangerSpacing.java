package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Collectors;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/**
 * The greatest distance of hangers of a horizontal pipe filled with water, as a rule prints it. Nothing is read between the sizes: no
 * formula is published with the guide spans. Immutable.
 *
 * @param rule whose rule
 * @param pipe kind of pipe
 * @param size nominal size in inches as the trade writes it, such as {@code 1-1/2}
 * @param span greatest distance
 * @param source where it comes from
 */
public record HangerSpacing(SpacingRule rule, SpacedPipe pipe, String size, Length span, Source source)
        implements Serializable {

    /** Characters of a size that a message repeats. */
    private static final int LONGEST_ECHO = 20;

    /**
     * The distance by a rule.
     *
     * @param rule whose rule
     * @param pipe kind of pipe
     * @param size nominal size in inches, such as {@code 3/4} or {@code 1-1/2}
     * @return the distance with its source
     * @throws OutOfRangeException if the rule says nothing of that pipe in that size; the message lists the sizes
     */
    public static HangerSpacing of(SpacingRule rule, SpacedPipe pipe, String size) {
        String plain = size.strip();
        List<SpacingRow> rows = SpacingRow.of(rule, pipe);
        return rows.stream()
                .filter(row -> row.covers(plain))
                .findFirst()
                .map(row -> new HangerSpacing(rule, pipe, plain, row.span(), row.source()))
                .orElseThrow(
                        () -> new OutOfRangeException(
                                "pipe of " + rule,
                                pipe + " " + (plain.length() <= LONGEST_ECHO ? plain : "of a size that is no size"),
                                rows.isEmpty()
                                        ? "a kind of pipe that the rule names"
                                        : "one of the sizes "
                                                + rows.stream()
                                                        .map(SpacingRow::text)
                                                        .collect(Collectors.joining(", ")),
                                "take the distance from the adopted code or the pipe maker; it is not to be read between sizes"));
    }

    /**
     * What the reader must know.
     *
     * @return that the distance is not for spans with concentrated loads such as vessels
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.SPANS, SupportCautions.ENGINEER);
    }

    /**
     * The distance in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return pipe + " " + size + ": hangers no more than " + span.text(system) + " apart " + source;
    }
}
