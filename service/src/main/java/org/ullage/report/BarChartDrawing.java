package org.ullage.report;

import java.util.Objects;
import org.ullage.report.Svg.Paint;

/** Lays out a bar chart: names at the left of the bars and values behind them, or both above the bars where that is too tight. */
final class BarChartDrawing {

    private final BarChart chart;
    private final double width;
    private final Svg svg = new Svg();
    private final BarLabels labels;

    BarChartDrawing(BarChart chart, double width) {
        this.chart = chart;
        this.width = width;
        labels = new BarLabels(chart, width);
    }

    String svg() {
        double top = head() + Letters.gap();
        double bottom = top
                + Letters.gap()
                + chart.bars().stream().mapToDouble(this::height).sum();
        HorizontalAxis axis =
                HorizontalAxis.fitting(chart.axis(), chart.extent(), labels.leftMargin(), labels.rightMargin(), width);
        double end;
        if (chart.bars().isEmpty()) {
            bottom = top + 4 * Letters.line();
            end = ChartHead.withoutData(svg, axis, top, bottom);
        } else {
            end = axis.draw(svg, top, bottom);
            double zero = axis.scale().at(0);
            svg.line(zero, top, zero, bottom, Paint.line(Svg.QUIET_INK, 1));
            bars(axis.scale(), axis.left(), top + Letters.gap());
        }
        return svg.document(width, end + Letters.gap(), chart);
    }

    private double head() {
        double title = ChartHead.title(svg, chart.title(), width);
        Legend legend = new Legend(0, width, title);
        if (chart.bars().stream().anyMatch(Bar::isAlarming)) {
            legend.add(chart.alarmName(), (drawn, from, to, y) -> bar(drawn, from, to, y, Pen.ALARM));
        }
        if (chart.bars().stream().map(Bar::mark).anyMatch(Objects::nonNull)) {
            legend.add(chart.markName(), (drawn, from, to, y) -> mark(drawn, (from + to) / 2, y));
        }
        if (chart.bars().stream().map(Bar::low).anyMatch(Objects::nonNull)) {
            legend.add(chart.rangeName(), BarChartDrawing::range);
        }
        legend.draw(svg);
        return legend.bottom();
    }

    private double height(Bar bar) {
        return labels.heightAbove(bar) + Letters.line() + 2 * Letters.gap();
    }

    private void bars(Scale x, double left, double top) {
        double y = top;
        for (Bar bar : chart.bars()) {
            double middle = y + labels.heightAbove(bar) + Letters.line() / 2;
            double from = x.at(Math.min(0, bar.value()));
            bar(svg, from, x.at(Math.max(0, bar.value())), middle, bar.isAlarming() ? Pen.ALARM : Pen.BAR);
            if (bar.low() != null && bar.high() != null) {
                range(svg, x.at(bar.low()), x.at(bar.high()), middle);
            }
            if (bar.mark() != null) {
                mark(svg, x.at(bar.mark()), middle);
            }
            labels.draw(svg, bar, left, x.at(BarChart.furthest(bar)), y);
            y += height(bar);
        }
    }

    private static void bar(Svg svg, double from, double to, double middle, String colour) {
        double half = Letters.line() / 2;
        svg.rectangle(from, middle - half, to - from, 2 * half, Paint.face(colour));
    }

    /** Black on white, to be seen on a bar of any colour. */
    private static void mark(Svg svg, double x, double middle) {
        double half = Letters.line() / 2 + 2;
        svg.line(x, middle - half, x, middle + half, Paint.line(Svg.PAPER, 2 * 2));
        svg.line(x, middle - half, x, middle + half, Paint.line(Svg.INK, 2));
    }

    private static void range(Svg svg, double from, double to, double middle) {
        double cap = Marker.radius();
        Paint paint = Paint.line(Svg.INK, 1);
        svg.line(from, middle, to, middle, paint);
        svg.line(from, middle - cap, from, middle + cap, paint);
        svg.line(to, middle - cap, to, middle + cap, paint);
    }
}
