package org.ullage.report;

import java.util.List;
import org.ullage.report.Svg.Paint;

/** The mark of a point. */
enum Marker {
    CIRCLE,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    CROSS;

    static double radius() {
        return Letters.size() * 3 / 10;
    }

    void draw(Svg svg, double x, double y, String colour) {
        double r = radius();
        Paint face = Paint.face(colour);
        switch (this) {
            case CIRCLE -> svg.circle(x, y, r, face);
            case SQUARE -> svg.rectangle(x - r, y - r, 2 * r, 2 * r, face);
            case TRIANGLE ->
                svg.path(List.of(Svg.place(x, y - r), Svg.place(x + r, y + r), Svg.place(x - r, y + r)), true, face);
            case DIAMOND ->
                svg.path(
                        List.of(Svg.place(x, y - r), Svg.place(x + r, y), Svg.place(x, y + r), Svg.place(x - r, y)),
                        true,
                        face);
            case CROSS -> {
                svg.line(x - r, y - r, x + r, y + r, Paint.line(colour, 2));
                svg.line(x - r, y + r, x + r, y - r, Paint.line(colour, 2));
            }
        }
    }
}
