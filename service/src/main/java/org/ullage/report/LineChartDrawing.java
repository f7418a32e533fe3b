package org.ullage.report;

import java.util.List;
import java.util.stream.IntStream;
import org.ullage.report.Series.Style;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;

/** Lays out a line chart: title, legend and axis name above the plot, levels named at its right. */
final class LineChartDrawing {

    private static final double PLOT_HEIGHT = 280;

    private final LineChart chart;
    private final double width;
    private final Svg svg = new Svg();
    private final List<SeriesDrawing> series;
    private final LevelLabels levels;

    LineChartDrawing(LineChart chart, double width) {
        this.chart = chart;
        this.width = width;
        series = IntStream.range(0, chart.series().size())
                .mapToObj(i -> new SeriesDrawing(chart.series().get(i), Pen.of(i)))
                .toList();
        levels = new LevelLabels(chart, width * 0.5 / 2);
    }

    String svg() {
        double top = head() + 2 * Letters.gap();
        double bottom = top + Math.max(PLOT_HEIGHT, levels.height());
        Ticks ticks = chart.y().ticks(chart.extentOfY(), (int) (PLOT_HEIGHT / (3 * Letters.line())));
        HorizontalAxis x = HorizontalAxis.fitting(
                chart.x(), chart.extentOfX(), ticks.widestLabel() + Letters.gap(), levels.width(), width);
        double end;
        if (chart.isEmpty()) {
            end = ChartHead.withoutData(svg, x, top, bottom);
        } else {
            Scale y = Scale.of(ticks, bottom, top);
            rows(ticks, y, x);
            end = x.draw(svg, top, bottom);
            content(x, y);
        }
        return svg.document(width, end + Letters.gap(), chart);
    }

    /** Title, legend and the name of the left axis; returns where they end. */
    private double head() {
        double title = ChartHead.title(svg, chart.title(), width);
        Legend legend = new Legend(0, width, title);
        series.forEach(one -> legend.add(legendName(one.series()), one::swatch));
        legend.draw(svg);
        double top = legend.bottom() + Letters.gap();
        List<String> name = Letters.wrapped(chart.y().text(), width);
        svg.lines(0, top, Anchor.START, Svg.INK, false, name);
        return top + name.size() * Letters.line();
    }

    private static String legendName(Series series) {
        return series.points().isEmpty() ? series.name() + " (no data)" : series.name();
    }

    private void rows(Ticks ticks, Scale y, HorizontalAxis x) {
        for (Ticks.Tick tick : ticks.list()) {
            double height = y.at(tick.value());
            svg.line(x.left(), height, x.right(), height, Paint.line(Svg.GRID, 1));
            svg.text(
                    x.left() - Letters.gap(),
                    height + Letters.middleToBase(),
                    Anchor.END,
                    Svg.QUIET_INK,
                    false,
                    tick.label());
        }
    }

    /** Bands at the back, then levels, then lines and points. */
    private void content(HorizontalAxis x, Scale y) {
        series.stream().filter(one -> one.series().style() == Style.BAND).forEach(band -> band.draw(svg, x.scale(), y));
        levels.draw(svg, x.left(), x.right(), y);
        series.stream().filter(one -> one.series().style() != Style.BAND).forEach(line -> line.draw(svg, x.scale(), y));
    }
}
