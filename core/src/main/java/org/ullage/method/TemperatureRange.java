package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;

/**
 * The temperatures a rule may be used for. Immutable.
 *
 * @param countsFrom the cold temperature the rule's expansion starts at
 * @param lowest below this it is refused
 * @param highest above this it is refused; null if the rule has no upper limit but the boiling of the fluid
 * @param remarks what to say about parts of the range
 * @param source where the limits come from
 */
public record TemperatureRange(
        Temperature countsFrom,
        Temperature lowest,
        @Nullable Temperature highest,
        List<Remark> remarks,
        Source source) implements Serializable {

    /**
     * Copies the remarks.
     *
     * @param countsFrom the cold temperature the rule's expansion starts at
     * @param lowest below this it is refused
     * @param highest above this it is refused
     * @param remarks what to say about parts of the range
     * @param source where the limits come from
     */
    public TemperatureRange {
        remarks = List.copyOf(remarks);
    }

    /**
     * Something to say when the highest temperature is within a part of the range.
     *
     * @param from lower end, inclusive
     * @param to upper end, inclusive
     * @param caution what to say
     */
    public record Remark(Temperature from, Temperature to, Caution caution) implements Serializable {}

    void require(double kelvins) {
        if (kelvins < lowest.si() || (highest != null && kelvins > highest.si())) {
            String upper = highest == null ? " upwards" : " to " + highest.textInBothSystems();
            throw new OutOfRangeException(
                    "highest temperature",
                    Temperature.ofSi(kelvins).textInBothSystems(),
                    "from " + lowest.textInBothSystems() + upper + " for this rule (" + source.document() + ")",
                    "take a method that uses the fluid's density");
        }
    }

    List<Caution> remarks(double kelvins) {
        return remarks.stream()
                .filter(remark ->
                        kelvins >= remark.from().si() && kelvins <= remark.to().si())
                .map(Remark::caution)
                .toList();
    }
}
