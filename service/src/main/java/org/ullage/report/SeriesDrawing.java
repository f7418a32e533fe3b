package org.ullage.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ullage.report.Series.Style;
import org.ullage.report.Svg.Paint;

/** Draws one series, and its sample for the legend. */
record SeriesDrawing(Series series, Pen pen) {

    /** What comes down to one place makes neither line nor face; it is marked. */
    void draw(Svg svg, Scale x, Scale y) {
        List<String> low = places(x, y, Point::low);
        List<String> high = places(x, y, Point::high);
        List<String> middle = places(x, y, Point::y);
        boolean isPlace = middle.size() == 1 && low.size() == 1 && high.size() == 1;
        if (isPlace || series.style() == Style.POINTS || series.style() == Style.JOINED_POINTS) {
            points(svg, x, y);
        } else if (series.style() == Style.BAND) {
            band(svg, low, high);
        }
        if (series.style() == Style.LINE || series.style() == Style.JOINED_POINTS) {
            line(svg, middle, lineWidth());
        }
    }

    private double lineWidth() {
        return series.style() == Style.LINE ? 2 : 1;
    }

    /** Places that are drawn alike are written once. */
    private List<String> places(Scale x, Scale y, ToDoubleFunction<Point> height) {
        List<String> places = new ArrayList<>();
        for (Point point : series.points()) {
            String place = Svg.place(x.at(point.x()), y.at(height.applyAsDouble(point)));
            if (places.isEmpty() || !places.get(places.size() - 1).equals(place)) {
                places.add(place);
            }
        }
        return places;
    }

    private void line(Svg svg, List<String> places, double width) {
        if (places.size() > 1) {
            svg.path(places, false, pen.line(width));
        }
    }

    private void points(Svg svg, Scale x, Scale y) {
        for (Point point : series.points()) {
            if (point.hasRange()) {
                bar(svg, x.at(point.x()), y.at(point.low()), y.at(point.high()));
            }
            pen.marker().draw(svg, x.at(point.x()), y.at(point.y()), pen.colour());
        }
    }

    private void bar(Svg svg, double x, double low, double high) {
        Paint paint = Paint.line(pen.colour(), 1);
        double cap = Marker.radius();
        svg.line(x, low, x, high, paint);
        svg.line(x - cap, low, x + cap, low, paint);
        svg.line(x - cap, high, x + cap, high, paint);
    }

    private void band(Svg svg, List<String> low, List<String> high) {
        List<String> around = new ArrayList<>(high);
        Collections.reverse(around);
        around.addAll(0, low);
        svg.path(around, true, Paint.sheerFace(pen.colour()));
        line(svg, low, 1);
        line(svg, high, 1);
    }

    void swatch(Svg svg, double from, double to, double y) {
        Style style = series.style();
        if (style == Style.BAND) {
            double half = Marker.radius();
            svg.rectangle(from, y - half, to - from, 2 * half, Paint.sheerFace(pen.colour()));
            svg.line(from, y - half, to, y - half, pen.line(1));
            svg.line(from, y + half, to, y + half, pen.line(1));
            return;
        }
        if (style != Style.POINTS) {
            svg.line(from, y, to, y, pen.line(lineWidth()));
        }
        if (style != Style.LINE) {
            pen.marker().draw(svg, (from + to) / 2, y, pen.colour());
        }
    }
}
