package org.ullage.report;

import java.util.stream.Collectors;

/** A line chart told in words. */
final class LineChartWords {

    private LineChartWords() {}

    static String of(LineChart chart) {
        String head = upper(chart.y().text()) + ", over " + chart.x().text() + ". ";
        if (chart.isEmpty()) {
            return head + "No data.";
        }
        String series = chart.series().stream().map(one -> told(chart, one)).collect(Collectors.joining());
        String levels = chart.levels().stream()
                .map(level -> (level.isLimit() ? "Limit: " : "Level: ") + level.name() + " "
                        + chart.y().text(level.y()) + ". ")
                .collect(Collectors.joining());
        return (head + series + levels).strip();
    }

    private static String upper(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String told(LineChart chart, Series series) {
        if (series.points().isEmpty()) {
            return upper(series.name()) + ": no data. ";
        }
        Point first = series.points().get(0);
        Point last = series.points().get(series.points().size() - 1);
        String at = place(chart, series, first);
        return upper(series.name()) + ": "
                + (series.points().size() == 1 ? at : "from " + at + " to " + place(chart, series, last))
                + count(series) + ". ";
    }

    private static String place(LineChart chart, Series series, Point point) {
        String height = series.style() == Series.Style.BAND
                ? chart.y().text(point.low()) + " ... " + chart.y().text(point.high())
                : chart.y().text(point.y());
        return height + " at " + chart.x().text(point.x());
    }

    private static String count(Series series) {
        boolean areSeen = series.style() == Series.Style.POINTS || series.style() == Series.Style.JOINED_POINTS;
        return areSeen && series.points().size() > 1 ? ", " + series.points().size() + " points" : "";
    }
}
