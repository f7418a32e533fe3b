package org.ullage.report;

/** How wide a chart is drawn. The size of its letters stays the same, so it is read as easily on a telephone as on a desk. */
public enum ChartWidth {
    /** For a desk and for paper. */
    WIDE,
    /** For a telephone held upright. */
    NARROW;

    private static final int WIDE_PIXELS = 720;
    private static final int NARROW_PIXELS = 358;

    /**
     * The width of the drawing.
     *
     * @return in CSS pixels
     */
    public int pixels() {
        return this == WIDE ? WIDE_PIXELS : NARROW_PIXELS;
    }
}
