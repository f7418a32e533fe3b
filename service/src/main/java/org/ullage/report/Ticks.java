package org.ullage.report;

import java.util.List;
import java.util.stream.IntStream;

/** The marks of an axis, from the end that is at or below the data to the end that is at or above it. */
record Ticks(List<Tick> list) {

    /** A mark with its label, which may be empty. */
    record Tick(double value, String label) {}

    double first() {
        return list.get(0).value();
    }

    double last() {
        return list.get(list.size() - 1).value();
    }

    double widestLabel() {
        return Letters.widest(list.stream().map(Tick::label).toList());
    }

    /** What sticks out on the left if the first label is centred on its mark. */
    double halfFirst() {
        return Letters.width(list.get(0).label()) / 2;
    }

    /** What sticks out on the right. */
    double halfLast() {
        return Letters.width(list.get(list.size() - 1).label()) / 2;
    }

    /** Whether the labels stand side by side on a length without touching. */
    boolean fit(double length) {
        double room = Letters.gap() * 2;
        return IntStream.range(1, list.size()).allMatch(i -> {
            double apart = length * (list.get(i).value() - list.get(i - 1).value()) / (last() - first());
            double labels = Letters.width(list.get(i - 1).label())
                    + Letters.width(list.get(i).label());
            return apart >= labels / 2 + room;
        });
    }

    /** Only the ends keep their labels. */
    Ticks withLabelsAtTheEnds() {
        int end = list.size() - 1;
        return new Ticks(IntStream.rangeClosed(0, end)
                .mapToObj(i ->
                        i == 0 || i == end ? list.get(i) : new Tick(list.get(i).value(), ""))
                .toList());
    }
}
