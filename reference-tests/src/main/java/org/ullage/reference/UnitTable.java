package org.ullage.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;

/** The units in which cases give their inputs, and the way to coherent SI. */
final class UnitTable {

    private static final List<Function<String, Double>> READERS = Stream.concat(
                    Stream.of(Measure.values()).map(measure -> (Function<String, Double>) measure::read),
                    Stream.<Function<String, Double>>of(
                            text -> SectionModulus.parse(text).si(),
                            text -> SecondMoment.parse(text).si()))
            .toList();

    private UnitTable() {}

    /**
     * A straight line from a number to coherent SI.
     *
     * @param factor SI value of a step of one
     * @param offset SI value of zero
     */
    record Line(double factor, double offset) {}

    /** The units that follow a number in an input, in alphabetical order. */
    static Map<String, Line> of(List<ReferenceCase> cases) {
        Map<String, Line> units = new TreeMap<>();
        cases.stream()
                .flatMap(each -> each.question().inputs().values().stream())
                .flatMap(input -> Figure.unitOf(input).stream())
                .distinct()
                .forEach(unit -> line(unit).ifPresent(line -> units.put(unit, line)));
        return units;
    }

    private static Optional<Line> line(String unit) {
        return READERS.stream().flatMap(reader -> line(unit, reader).stream()).findFirst();
    }

    private static Optional<Line> line(String unit, Function<String, Double> reader) {
        try {
            double one = reader.apply("1 " + unit);
            double factor = reader.apply("2 " + unit) - one;
            return Optional.of(new Line(factor, one - factor));
        } catch (IllegalArgumentException notOfThisKind) {
            return Optional.empty();
        }
    }
}
