package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;

/** Names and values of bars: beside them if both take no more than half the width, else above them. */
final class BarLabels {

    private final BarChart chart;
    private final double width;
    private final double names;
    private final double values;

    BarLabels(BarChart chart, double width) {
        this.chart = chart;
        this.width = width;
        names = Letters.widest(chart.bars().stream().map(BarLabels::name).toList());
        values = chart.bars().stream().mapToDouble(this::valueWidth).max().orElse(0);
    }

    private static String name(Bar bar) {
        return VisibleText.line(bar.name());
    }

    private String value(Bar bar) {
        return VisibleText.line(chart.label(bar));
    }

    private double valueWidth(Bar bar) {
        return bar.isAlarming() ? Letters.boldWidth(value(bar)) : Letters.width(value(bar));
    }

    private boolean areBeside() {
        return names + values + 3 * Letters.gap() <= width / 2;
    }

    /** Room at the left of the plot. */
    double leftMargin() {
        return areBeside() ? names + Letters.gap() : 0;
    }

    /** Room at the right of the plot. */
    double rightMargin() {
        return areBeside() ? values + Letters.gap() : 0;
    }

    /** Room above a bar. */
    double heightAbove(Bar bar) {
        return areBeside() ? 0 : above(bar).size() * Letters.line();
    }

    private List<String> above(Bar bar) {
        List<String> lines = new ArrayList<>(Letters.wrapped(bar.name(), width));
        if (!isOnOneLine(bar)) {
            lines.addAll(Letters.wrapped(chart.label(bar), width));
        }
        return lines;
    }

    private boolean isOnOneLine(Bar bar) {
        return Letters.width(name(bar)) + 3 * Letters.gap() + valueWidth(bar) <= width;
    }

    /**
     * @param left where the plot begins
     * @param end of what is drawn for the bar
     * @param top of its row
     */
    void draw(Svg svg, Bar bar, double left, double end, double top) {
        if (areBeside()) {
            svg.lines(left - Letters.gap(), top, Anchor.END, Svg.INK, false, List.of(name(bar)));
            svg.lines(end + Letters.gap(), top, Anchor.START, Svg.INK, bar.isAlarming(), List.of(value(bar)));
            return;
        }
        // The grid does not run through the words.
        svg.rectangle(0, top, width, heightAbove(bar), Paint.face(Svg.PAPER));
        svg.lines(0, top, Anchor.START, Svg.INK, false, above(bar));
        if (isOnOneLine(bar)) {
            svg.lines(width, top, Anchor.END, Svg.INK, bar.isAlarming(), List.of(value(bar)));
        }
    }
}
