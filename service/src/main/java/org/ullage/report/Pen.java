package org.ullage.report;

import java.util.List;
import org.ullage.report.Svg.Paint;

/**
 * How one of several series is told from the others: colour, stroke and mark all differ, so that no one has to rely on colour. The
 * colours are those of "Color Universal Design (CUD): How to make figures and presentations that are friendly to colorblind people"
 * (2008), from memory; its vermilion is kept for what must not be passed, its yellow is too light for paper.
 */
record Pen(String colour, String dash, Marker marker) {

    static final String ALARM = "#d55e00";
    static final String BAR = "#56b4e9";

    private static final List<String> COLOURS =
            List.of("#0072b2", "#009e73", "#cc79a7", "#e69f00", "#000000", "#56b4e9");

    private static final List<String> DASHES = List.of("", "8 4", "2 3", "10 3 2 3", "5 3");

    private static final List<String> LEVEL_DASHES = List.of("6 4", "2 3", "10 3 2 3", "4 2", "12 4");

    /** The pen of a series by its place among all; only after thirty does one come again. */
    static Pen of(int index) {
        Marker[] markers = Marker.values();
        return new Pen(
                COLOURS.get(index % COLOURS.size()),
                DASHES.get(index % DASHES.size()),
                markers[index % markers.length]);
    }

    Paint line(double width) {
        return Paint.line(colour, width).dashed(dash);
    }

    /** The paint of a level by its place among all. */
    static Paint level(int index, boolean isLimit) {
        return isLimit
                ? Paint.line(ALARM, 2)
                : Paint.line(Svg.QUIET_INK, 1).dashed(LEVEL_DASHES.get(index % LEVEL_DASHES.size()));
    }
}
