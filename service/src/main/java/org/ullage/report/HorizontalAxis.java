package org.ullage.report;

import java.util.List;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;
import org.ullage.report.Ticks.Tick;

/** The axis along the bottom of a plot: as many marks as have room, and margins that the labels at its ends do not pass. */
record HorizontalAxis(Axis axis, Ticks ticks, double left, double right, double width) {

    /**
     * @param leftMargin what stands at the left of the plot
     * @param rightMargin what stands at its right
     * @param width of the whole chart
     */
    static HorizontalAxis fitting(Axis axis, Extent extent, double leftMargin, double rightMargin, double width) {
        int most = Math.max(2, (int) (width / (4 * Letters.line())));
        for (int intervals = most; intervals > 2; intervals--) {
            HorizontalAxis tried = with(axis, axis.ticks(extent, intervals), leftMargin, rightMargin, width);
            if (tried.ticks.fit(tried.right - tried.left)) {
                return tried;
            }
        }
        HorizontalAxis coarse = with(axis, axis.ticks(extent, 2), leftMargin, rightMargin, width);
        return coarse.ticks.fit(coarse.right - coarse.left)
                ? coarse
                : new HorizontalAxis(axis, coarse.ticks.withLabelsAtTheEnds(), coarse.left, coarse.right, width);
    }

    private static HorizontalAxis with(Axis axis, Ticks ticks, double leftMargin, double rightMargin, double width) {
        double left = Math.max(leftMargin, ticks.halfFirst());
        double right = width - Math.max(rightMargin, ticks.halfLast()) - Letters.gap();
        return new HorizontalAxis(axis, ticks, left, right, width);
    }

    Scale scale() {
        return Scale.of(ticks, left, right);
    }

    /** Draws grid, base line, labels and name; returns where they end. */
    double draw(Svg svg, double top, double bottom) {
        Scale scale = scale();
        for (Tick tick : ticks.list()) {
            double x = scale.at(tick.value());
            svg.line(x, top, x, bottom, Paint.line(Svg.GRID, 1));
        }
        svg.line(left, bottom, right, bottom, Paint.line(Svg.QUIET_INK, 1));
        double labels = bottom + Letters.gap();
        for (Tick tick : ticks.list()) {
            if (!tick.label().isEmpty()) {
                svg.lines(scale.at(tick.value()), labels, Anchor.MIDDLE, Svg.QUIET_INK, false, List.of(tick.label()));
            }
        }
        return name(svg, labels + Letters.line() + Letters.gap() / 2);
    }

    /** The name of the axis: below the middle of the plot, or from the left edge where it is longer than the plot. */
    double name(Svg svg, double top) {
        String name = VisibleText.line(axis.text());
        if (Letters.width(name) <= right - left) {
            svg.lines((left + right) / 2, top, Anchor.MIDDLE, Svg.INK, false, List.of(name));
            return top + Letters.line();
        }
        List<String> lines = Letters.wrapped(name, width);
        svg.lines(0, top, Anchor.START, Svg.INK, false, lines);
        return top + lines.size() * Letters.line();
    }
}
