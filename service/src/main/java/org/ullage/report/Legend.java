package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.ullage.report.Svg.Anchor;

/** What the marks of a chart mean: swatches with names, side by side as far as the width allows. */
final class Legend {

    /** Draws the sample of an entry between two places on a line. */
    interface Swatch {

        void draw(Svg svg, double from, double to, double y);
    }

    private record Entry(double x, double top, List<String> lines, Swatch swatch) {}

    private final List<Entry> entries = new ArrayList<>();
    private final double left;
    private final double right;
    private double x;
    private double top;
    private double bottom;

    Legend(double left, double right, double top) {
        this.left = left;
        this.right = right;
        this.top = top;
        x = left;
        bottom = top;
    }

    private static double swatchWidth() {
        return Letters.size() * 2;
    }

    void add(String name, Swatch swatch) {
        double beforeText = swatchWidth() + Letters.gap();
        if (x > left && x + beforeText + Letters.width(VisibleText.line(name)) > right) {
            x = left;
            top = bottom + Letters.gap() / 2;
        }
        List<String> lines = Letters.wrapped(name, right - x - beforeText);
        entries.add(new Entry(x, top, lines, swatch));
        x += beforeText + Letters.widest(lines) + 2 * Letters.gap();
        bottom = Math.max(bottom, top + lines.size() * Letters.line());
    }

    /** Lower edge of all entries; the upper edge if there are none. */
    double bottom() {
        return bottom;
    }

    void draw(Svg svg) {
        for (Entry entry : entries) {
            double text = entry.x() + swatchWidth() + Letters.gap();
            entry.swatch().draw(svg, entry.x(), entry.x() + swatchWidth(), entry.top() + Letters.line() / 2);
            svg.lines(text, entry.top(), Anchor.START, Svg.INK, false, entry.lines());
        }
    }
}
