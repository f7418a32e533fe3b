package org.ullage.report;

import java.util.List;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;

/** What every chart has: its title at the top, and a plot that says so if there is nothing to show. */
final class ChartHead {

    private ChartHead() {}

    /** Draws the title; returns where what follows begins. */
    static double title(Svg svg, String title, double width) {
        List<String> lines = Letters.wrappedBold(title, width);
        svg.lines(0, 0, Anchor.START, Svg.INK, true, lines);
        return lines.size() * Letters.line() + Letters.gap();
    }

    /** Draws an empty plot; returns where it ends. */
    static double withoutData(Svg svg, HorizontalAxis axis, double top, double bottom) {
        svg.rectangle(axis.left(), top, axis.right() - axis.left(), bottom - top, Paint.line(Svg.GRID, 1));
        double middle = (axis.left() + axis.right()) / 2;
        svg.text(middle, (top + bottom) / 2, Anchor.MIDDLE, Svg.QUIET_INK, false, "No data");
        return axis.name(svg, bottom + Letters.gap());
    }
}
