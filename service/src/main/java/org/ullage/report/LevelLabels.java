package org.ullage.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;

/** The names of the levels, at the right of the plot, moved apart where levels are close. */
final class LevelLabels {

    private final List<Level> levels;
    private final List<List<String>> texts;

    /** @param room width for the text */
    LevelLabels(LineChart chart, double room) {
        levels = chart.levels().stream()
                .sorted(Comparator.comparingDouble(Level::y).reversed())
                .toList();
        texts = levels.stream().map(level -> text(level, chart.y(), room)).toList();
    }

    private static List<String> text(Level level, Axis y, double room) {
        String text = level.name() + " " + unbroken(y.text(level.y()));
        return level.isLimit() ? Letters.wrappedBold(text, room) : Letters.wrapped(text, room);
    }

    /** A number stays with its unit. */
    private static String unbroken(String value) {
        return value.replace(' ', '\u00a0');
    }

    /** Width from the end of the plot to the end of the longest label. */
    double width() {
        return levels.isEmpty()
                ? 0
                : leader()
                        + IntStream.range(0, levels.size())
                                .mapToDouble(this::width)
                                .max()
                                .orElse(0);
    }

    private double width(int index) {
        DoubleStream widths = levels.get(index).isLimit()
                ? texts.get(index).stream().mapToDouble(Letters::boldWidth)
                : texts.get(index).stream().mapToDouble(Letters::width);
        return widths.max().orElse(0);
    }

    private static double leader() {
        return 3 * Letters.gap();
    }

    /** All labels above one another. */
    double height() {
        return IntStream.range(0, levels.size()).mapToDouble(this::height).sum();
    }

    private double height(int index) {
        return texts.get(index).size() * Letters.line();
    }

    /** Draws the lines over the plot and the labels beside it. */
    void draw(Svg svg, double left, double right, Scale y) {
        double[] tops = tops(y);
        for (int i = 0; i < levels.size(); i++) {
            Level level = levels.get(i);
            Paint paint = Pen.level(i, level.isLimit());
            double height = y.at(level.y());
            double beside = tops[i] + height(i) / 2;
            svg.line(left, height, right, height, paint);
            svg.line(right, height, right + leader() - Letters.gap(), beside, Paint.line(Svg.QUIET_INK, 1));
            svg.lines(right + leader(), tops[i], Anchor.START, Svg.INK, level.isLimit(), texts.get(i));
        }
    }

    /** Each beside its level where it can be; pushed down by the one above it, and all up again from the bottom of the plot. */
    private double[] tops(Scale y) {
        double[] tops = new double[levels.size()];
        double free = y.lastPixel();
        for (int i = 0; i < tops.length; i++) {
            tops[i] = Math.max(free, y.at(levels.get(i).y()) - height(i) / 2);
            free = tops[i] + height(i);
        }
        free = y.firstPixel();
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], free - height(i));
            free = tops[i];
        }
        return tops;
    }
}
