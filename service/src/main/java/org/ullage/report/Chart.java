package org.ullage.report;

/** A chart as SVG. Immutable; the same chart gives the same bytes everywhere. */
public sealed interface Chart extends Block permits LineChart, BarChart, HeatMap {

    /**
     * What it shows.
     *
     * @return its title
     */
    String title();

    /**
     * What is to be seen on it, for those who cannot see it.
     *
     * @return a few sentences
     */
    String description();

    /**
     * The chart as a drawing of a given width; its height follows.
     *
     * @param width for a desk and paper, or for a telephone
     * @return one {@code svg} element with title and description, ended by a line feed
     */
    String svg(ChartWidth width);

    /**
     * The chart for a desk or paper.
     *
     * @return one {@code svg} element
     */
    default String svg() {
        return svg(ChartWidth.WIDE);
    }

    @Override
    default void writeTo(Medium medium) {
        medium.chart(this);
    }
}
