package org.ullage.report;

import java.util.List;

/** Writes SVG: elements with coordinates of at most one decimal, without ids, style sheets or scripts. Not for many threads. */
final class Svg {

    static final String INK = "#1f2a33";
    static final String QUIET_INK = "#4a5863";
    static final String GRID = "#dde4e9";
    static final String PAPER = "#ffffff";

    private static final long TENTHS = 10;

    private final StringBuilder body = new StringBuilder();

    /** Where text is anchored to its coordinate. */
    enum Anchor {
        START,
        MIDDLE,
        END;

        private String word() {
            return this == START ? "start" : this == MIDDLE ? "middle" : "end";
        }
    }

    /** How lines and faces are painted. */
    record Paint(String stroke, double width, String dash, String fill, boolean isSheer) {

        static Paint line(String colour, double width) {
            return new Paint(colour, width, "", "none", false);
        }

        static Paint face(String colour) {
            return new Paint("none", 0, "", colour, false);
        }

        Paint dashed(String pattern) {
            return new Paint(stroke, width, pattern, fill, isSheer);
        }

        /** A face that lets what is behind it show. */
        static Paint sheerFace(String colour) {
            return new Paint("none", 0, "", colour, true);
        }

        private String attributes() {
            String strokes = stroke.equals("none")
                    ? ""
                    : " stroke=\"" + stroke + "\" stroke-width=\"" + number(width) + "\""
                            + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
            return " fill=\"" + fill + (isSheer ? "\" fill-opacity=\"0.2\"" : "\"") + strokes;
        }
    }

    /** A coordinate rounded to a tenth, written without regard to any language. */
    static String number(double coordinate) {
        long tenths = Math.round(coordinate * TENTHS);
        long rest = Math.abs(tenths % TENTHS);
        String digits = Math.abs(tenths / TENTHS) + (rest == 0 ? "" : "." + rest);
        return tenths < 0 ? "-" + digits : digits;
    }

    void line(double x1, double y1, double x2, double y2, Paint paint) {
        body.append("<line x1=\"").append(number(x1)).append("\" y1=\"").append(number(y1));
        body.append("\" x2=\"")
                .append(number(x2))
                .append("\" y2=\"")
                .append(number(y2))
                .append('"');
        body.append(paint.attributes()).append("/>\n");
    }

    void rectangle(double x, double y, double width, double height, Paint paint) {
        body.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
        body.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
        body.append('"').append(paint.attributes()).append("/>\n");
    }

    void circle(double x, double y, double radius, Paint paint) {
        body.append("<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y));
        body.append("\" r=\"").append(number(radius)).append('"').append(paint.attributes());
        body.append("/>\n");
    }

    /** A path through places written by {@link #place}. */
    void path(List<String> places, boolean isClosed, Paint paint) {
        body.append("<path d=\"M").append(String.join("L", places)).append(isClosed ? "Z\"" : "\"");
        body.append(" stroke-linejoin=\"round\"").append(paint.attributes()).append("/>\n");
    }

    static String place(double x, double y) {
        return number(x) + " " + number(y);
    }

    /** One line of text on its base line. */
    void text(double x, double y, Anchor anchor, String colour, boolean isBold, String text) {
        body.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y));
        body.append("\" text-anchor=\"")
                .append(anchor.word())
                .append("\" fill=\"")
                .append(colour);
        body.append(isBold ? "\" font-weight=\"600\">" : "\">")
                .append(Xml.line(text))
                .append("</text>\n");
    }

    /** Lines of text below one another; {@code top} is the upper edge of the first. */
    void lines(double x, double top, Anchor anchor, String colour, boolean isBold, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            text(x, baseline(top + i * Letters.line()), anchor, colour, isBold, lines.get(i));
        }
    }

    /** The base line of text in a line with the given upper edge. */
    static double baseline(double top) {
        return top + Letters.size();
    }

    /** The drawing as one element. */
    String document(double width, double height, Chart chart) {
        String size = "width=\"" + number(width) + "\" height=\"" + number(height) + "\" viewBox=\"0 0 " + number(width)
                + " " + number(height) + "\"";
        String title = Xml.line(chart.title());
        String description = Xml.line(chart.description());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + size + " role=\"img\" aria-label=\"" + title
                + "\" font-family=\""
                + Letters.FAMILY + "\" font-size=\"" + number(Letters.size()) + "\">\n<title>" + title
                + "</title>\n<desc>"
                + description + "</desc>\n" + body + "</svg>\n";
    }
}
