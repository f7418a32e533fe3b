package org.ullage.report;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;

/** Whatever the names and the numbers: well-formed, repeatable, no label cut off and none over another. */
class ChartLabelsTest {

    @Property(tries = 300)
    void lineCharts(
            @ForAll("names") String title,
            @ForAll("names") String axis,
            @ForAll @Size(max = 4) List<@From("series") Series> series,
            @ForAll @Size(max = 6) List<@From("levels") Level> levels) {
        LabelChecks.check(
                new LineChart(title, Axis.of(axis, "bar"), Axis.of(title, axis), series, levels, levels.size() > 3));
    }

    @Property(tries = 100)
    void calendars(@ForAll("names") String title, @ForAll @Size(max = 5) List<@From("days") Double> days) {
        List<Point> points = days.stream().map(day -> Point.at(day, day / 7)).toList();
        LabelChecks.check(LineChart.titled(title)
                .dates("visit")
                .y("charge", "psi")
                .joinedPoints(title, points)
                .build());
    }

    @Property(tries = 300)
    void barCharts(@ForAll("names") String title, @ForAll @Size(max = 6) List<@From("bars") Bar> bars) {
        BarChartBuilder chart =
                BarChart.titled(title).axis(title, "L").marks(title).ranges("range");
        bars.forEach(chart::bar);
        LabelChecks.check(chart.build());
    }

    @Provide
    Arbitrary<String> names() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(20),
                Arbitraries.strings().withChars("abcW mi%M -").ofMaxLength(150),
                Arbitraries.of("", "fill", "relief setting", "W".repeat(100)));
    }

    /** Of every size that an axis takes, and many of the same. */
    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e15, 1e15),
                Arbitraries.doubles().between(-5, 5).ofScale(1),
                Arbitraries.doubles().between(1e6, 1e6 + 1).ofScale(6),
                Arbitraries.of(0.0, -0.0, 3.0, 1e-300, Double.MIN_VALUE, 1e15));
    }

    @Provide
    Arbitrary<Double> days() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-700_000, 370_000).ofScale(0),
                Arbitraries.doubles().between(19_000, 19_100).ofScale(0),
                Arbitraries.of(19_000.0, 19_000.5));
    }

    @Provide
    Arbitrary<Series> series() {
        Arbitrary<Point> points = Combinators.combine(numbers(), numbers(), numbers())
                .as((x, one, other) -> Point.between(x, Math.min(one, other), Math.max(one, other)));
        return Combinators.combine(
                        names(),
                        Arbitraries.of(Series.Style.class),
                        points.list().ofMaxSize(5))
                .as(Series::new);
    }

    @Provide
    Arbitrary<Level> levels() {
        return Combinators.combine(names(), numbers(), Arbitraries.of(true, false))
                .as(Level::new);
    }

    @Provide
    Arbitrary<Bar> bars() {
        return Combinators.combine(
                        names(),
                        numbers(),
                        numbers(),
                        names(),
                        Arbitraries.integers().between(0, 7))
                .as((name, value, other, note, kind) -> {
                    Bar bar = Bar.of(name, value).noted(note);
                    bar = kind % 2 == 0 ? bar : bar.markedAt(other);
                    bar = kind / 2 % 2 == 0 ? bar : bar.within(Math.min(value, other), Math.max(value, other));
                    return kind / 4 == 0 ? bar : bar.alarming();
                });
    }

    @Property(tries = 1)
    void manySeriesAndLevels() {
        LineChartBuilder chart = LineChart.titled("many").x("x", "").y("y", "");
        IntStream.range(0, 40).forEach(i -> {
            chart.line("series " + i, List.of(Point.at(0, i), Point.at(1, i)));
            chart.level("level " + i, 20);
        });
        LabelChecks.check(chart.build());
    }
}
