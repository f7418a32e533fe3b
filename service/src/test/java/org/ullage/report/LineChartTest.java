package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.w3c.dom.Document;

class LineChartTest {

    private static LineChartBuilder curve() {
        return LineChart.titled("Pressure over temperature")
                .x("temperature", "degC")
                .y("gauge pressure", "bar")
                .band("what the contents leave open", List.of(Point.between(10, 1, 1.2), Point.between(80, 2, 2.6)))
                .line("operating curve", Point.list(new double[] {10, 80}, new double[] {1.1, 2.3}))
                .points("readings", List.of(Point.at(40, 1.5).within(1.4, 1.6)))
                .limit("relief setting", 3)
                .level("gas charge", 1);
    }

    @Test
    void everythingIsNamed() {
        LabelChecks.check(curve().build());
        assertThat(texts(curve().build()))
                .contains(
                        "Pressure over temperature",
                        "temperature, degC",
                        "gauge pressure, bar",
                        "what the contents leave open",
                        "operating curve",
                        "readings",
                        "relief setting 3\u00a0bar",
                        "gas charge 1\u00a0bar");
    }

    private static List<String> texts(LineChart chart) {
        return Drawn.labels(Drawn.parse(chart.svg())).stream()
                .map(Drawn.Label::text)
                .toList();
    }

    @Test
    void heightsStandWhereTheAxisSays() {
        LineChart chart = LineChart.titled("one line")
                .x("x", "")
                .y("y", "")
                .line("line", Point.list(new double[] {0, 5, 10}, new double[] {0, 1, 4}))
                .build();
        Document svg = Drawn.parse(chart.svg());
        String[] places = Drawn.elements(svg, "path")
                .get(0)
                .getAttribute("d")
                .substring(1)
                .split("L", -1);
        double[] heights = Arrays.stream(places)
                .mapToDouble(place -> Double.parseDouble(place.substring(place.indexOf(' '))))
                .toArray();
        double[] across = Arrays.stream(places)
                .mapToDouble(place -> Double.parseDouble(place.substring(0, place.indexOf(' '))))
                .toArray();
        // a quarter of the height, and half the width
        assertThat((heights[0] - heights[1]) * 4).isCloseTo(heights[0] - heights[2], offset(0.5));
        assertThat((across[1] - across[0]) * 2).isCloseTo(across[2] - across[0], offset(0.3));
    }

    @Test
    void aCalendarTakesDates() {
        LineChart chart = LineChart.titled("Gas charge at the visits")
                .dates("visit")
                .y("gas charge", "psi")
                .joinedPoints(
                        "as found",
                        List.of(Point.on(LocalDate.of(2021, 10, 3), 18), Point.on(LocalDate.of(2023, 9, 30), 16)))
                .build();
        LabelChecks.check(chart);
        assertThat(texts(chart)).contains("2021-10", "2022-01", "2023-10", "visit");
        assertThat(chart.description())
                .isEqualTo("Gas charge, psi, over visit. As found: from 18 psi at 2021-10-03 to 16 psi at 2023-09-30,"
                        + " 2 points.");
        assertThatThrownBy(() -> LineChart.titled("far")
                        .dates("visit")
                        .y("y", "")
                        .line("line", List.of(Point.at(1e15, 1)))
                        .build())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("in the years 1 to 2999");
    }

    @Test
    void withoutDataItSaysSo() {
        LineChart empty = LineChart.titled("Nothing yet")
                .x("x", "")
                .y("y", "")
                .line("line", List.of())
                .build();
        LabelChecks.check(empty);
        assertThat(texts(empty)).contains("No data", "line (no data)");
        assertThat(empty.description()).isEqualTo("Y, over x. No data.");
    }

    @Test
    void onePlaceIsMarked() {
        for (Series.Style style : Series.Style.values()) {
            Series series = new Series("one", style, List.of(Point.at(3, 3), Point.at(3, 3)));
            LineChart chart =
                    new LineChart("one", Axis.of("x", ""), Axis.of("y", ""), List.of(series), List.of(), false);
            LabelChecks.check(chart);
            // besides what the legend shows
            assertThat(Drawn.elements(Drawn.parse(chart.svg()), "circle")).isNotEmpty();
        }
    }

    @Test
    void zeroIsShownOnRequest() {
        assertThat(texts(curve().build())).doesNotContain("0.0");
        assertThat(texts(curve().fromZero().build())).contains("0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1.1e15, -1e300})
    void whatCannotBeDrawnIsRefused(double number) {
        assertThatThrownBy(() -> Point.at(number, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Point.at(1, number)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Point.between(1, -2e15, number)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Point.at(1, 1).within(number, 2)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new Level("level", number, false)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void whatIsMissingOrCrossedIsRefused() {
        assertThatThrownBy(() -> LineChart.titled("t").x("x", "").build())
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("axis at the left");
        assertThatThrownBy(() -> Point.at(1, 1).within(2, 3))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from 2.0 to 3.0");
        assertThatThrownBy(() -> Point.list(new double[1], new double[2])).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new LineChart("t", Axis.of("x", ""), Axis.dates("y"), List.of(), List.of(), false))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void theReadersLanguageChangesNothing() {
        Locale usual = Locale.getDefault();
        String svg = curve().build().svg();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(curve().build().svg()).isEqualTo(svg);
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void survivesAStream() throws Exception {
        assertThat(Copies.of(curve().build())).isEqualTo(curve().build());
    }
}
