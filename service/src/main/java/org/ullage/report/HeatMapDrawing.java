package org.ullage.report;

import java.util.List;
import org.ullage.report.Svg.Anchor;
import org.ullage.report.Svg.Paint;

/** Lays out a heat map: labels of the rows at the left, of the columns below, as many of them as there is room for. */
final class HeatMapDrawing {

    /** Room that a label gets at least, in letters. */
    private static final int LEAST_LETTERS = 6;

    /** The labels of the rows get at most this part of the width: one in so many. */
    private static final int MOST_OF_WIDTH = 3;

    private final HeatMap map;
    private final double width;
    private final Svg svg = new Svg();
    private final Extent extent;
    private final double left;
    private final double cellWidth;
    private final int every;
    private final double columnRoom;

    HeatMapDrawing(HeatMap map, double width) {
        this.map = map;
        this.width = width;
        this.extent = map.extent();
        this.left = Math.min(Letters.widest(map.down().labels()), width / MOST_OF_WIDTH) + Letters.gap();
        int columns = map.across().labels().size();
        double widest = Letters.widest(map.across().labels());
        double wanted = Math.min(widest, LEAST_LETTERS * Letters.size()) + Letters.gap();
        this.every = (int) Math.ceil(wanted / ((width - left) / columns));
        // a label wider than its cell reaches beyond the last column
        double beyond = every == 1 ? 0 : wanted / 2;
        this.cellWidth = (width - left - beyond) / columns;
        this.columnRoom = Math.max(wanted, cellWidth) - Letters.gap();
    }

    String svg() {
        double y = head();
        svg.lines(
                0,
                y,
                Anchor.START,
                Svg.QUIET_INK,
                false,
                Letters.wrapped("Down: " + map.down().name(), width));
        y += Letters.line() + Letters.gap();
        boolean isLabelled = labelsFit();
        for (int row = 0; row < map.cells().size(); row++) {
            y = row(row, y, isLabelled);
        }
        return svg.document(width, columnLabels(y + Letters.gap()) + Letters.gap(), map);
    }

    private double head() {
        double title = ChartHead.title(svg, map.title(), width);
        List<String> name = Letters.wrapped(map.valueName(), width);
        svg.lines(0, title, Anchor.START, Svg.QUIET_INK, false, name);
        Legend legend = new Legend(0, width, title + name.size() * Letters.line() + Letters.gap());
        legend.add(map.leastLabel(), (drawn, from, to, y) -> swatch(drawn, from, to, y, HeatColour.of(0)));
        legend.add(map.largestLabel(), (drawn, from, to, y) -> swatch(drawn, from, to, y, HeatColour.of(1)));
        if (map.cells().stream().flatMap(List::stream).anyMatch(cell -> cell.value() == null)) {
            legend.add(map.gapName(), (drawn, from, to, y) -> gap(drawn, from, y - half(), to - from, 2 * half()));
        }
        legend.draw(svg);
        return legend.bottom() + Letters.gap();
    }

    private static double half() {
        return Letters.line() / 2;
    }

    private static void swatch(Svg svg, double from, double to, double middle, String colour) {
        svg.rectangle(from, middle - half(), to - from, 2 * half(), Paint.face(colour));
    }

    /** A crossed cell. */
    private static void gap(Svg svg, double x, double y, double width, double height) {
        svg.rectangle(x, y, width, height, Paint.line(Svg.QUIET_INK, 1));
        svg.line(x, y, x + width, y + height, Paint.line(Svg.QUIET_INK, 1));
    }

    private boolean labelsFit() {
        return map.cells().stream()
                .flatMap(List::stream)
                .filter(cell -> cell.value() != null)
                .allMatch(cell -> Letters.width(cell.label()) <= cellWidth - 2);
    }

    /** Draws a row; returns where it ends. */
    private double row(int index, double top, boolean isLabelled) {
        List<String> label = Letters.wrapped(map.down().labels().get(index), left - Letters.gap());
        double height = label.size() * Letters.line() + Letters.gap();
        svg.lines(left - Letters.gap(), top + Letters.gap() / 2, Anchor.END, Svg.INK, false, label);
        List<HeatCell> row = map.cells().get(index);
        for (int column = 0; column < row.size(); column++) {
            cell(row.get(column), left + column * cellWidth, top, height, isLabelled);
        }
        return top + height;
    }

    private void cell(HeatCell cell, double x, double top, double height, boolean isLabelled) {
        Double value = cell.value();
        if (value == null) {
            gap(svg, x, top, cellWidth, height);
            return;
        }
        double share = (value - extent.low()) / (extent.high() - extent.low());
        svg.rectangle(x, top, cellWidth, height, Paint.face(HeatColour.of(share)));
        if (isLabelled) {
            double base = top + height / 2 + Letters.middleToBase();
            svg.text(x + cellWidth / 2, base, Anchor.MIDDLE, HeatColour.ink(share), false, cell.label());
        }
    }

    /** Draws the labels of the columns and their name; returns where they end. */
    private double columnLabels(double top) {
        double bottom = top;
        List<String> labels = map.across().labels();
        for (int column = 0; column < labels.size(); column += every) {
            List<String> lines = Letters.wrapped(labels.get(column), columnRoom);
            double middle = left + column * cellWidth + cellWidth / 2;
            svg.lines(middle, top, Anchor.MIDDLE, Svg.INK, false, lines);
            bottom = Math.max(bottom, top + lines.size() * Letters.line());
        }
        List<String> name = Letters.wrapped("Across: " + map.across().name(), width);
        svg.lines(width, bottom + Letters.gap(), Anchor.END, Svg.QUIET_INK, false, name);
        return bottom + Letters.gap() + name.size() * Letters.line();
    }
}
