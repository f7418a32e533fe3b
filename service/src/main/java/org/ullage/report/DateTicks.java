package org.ullage.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoField;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ullage.report.Ticks.Tick;

/** Marks at round dates, labelled as ISO 8601 writes them: 2024-03-05, 2024-03 or 2024. */
final class DateTicks {

    private static final List<Period> STEPS = Stream.of(
                    "P1D", "P2D", "P7D", "P14D", "P1M", "P2M", "P3M", "P6M", "P1Y", "P2Y", "P5Y", "P10Y", "P20Y",
                    "P50Y", "P100Y", "P200Y", "P500Y", "P1000Y", "P2000Y")
            .map(Period::parse)
            .toList();

    private DateTicks() {}

    /**
     * The finest marks of which there are not too many.
     *
     * @param extent days since 1970-01-01
     * @param most intervals, 2 or more
     */
    static Ticks covering(Extent extent, int most) {
        return STEPS.stream()
                .map(step -> ticks(extent, step, most))
                .filter(ticks -> ticks.size() <= most + 1)
                .findFirst()
                .map(Ticks::new)
                .orElseThrow();
    }

    /** From the round date before the data to the one after it, or as many as show that there are too many. */
    private static List<Tick> ticks(Extent extent, Period step, int most) {
        List<Tick> ticks = new ArrayList<>();
        LocalDate date = before((long) Math.floor(extent.low()), step);
        ticks.add(tick(date, step));
        while (date.toEpochDay() < extent.high() && ticks.size() <= most + 1) {
            date = date.plus(step);
            ticks.add(tick(date, step));
        }
        return ticks;
    }

    /** Weeks begin on Mondays; months and years are counted from the year 0. */
    private static LocalDate before(long day, Period step) {
        if (step.get(ChronoUnit.DAYS) > 0) {
            long monday = LocalDate.EPOCH
                    .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                    .toEpochDay();
            return LocalDate.ofEpochDay(day - Math.floorMod(day - monday, step.get(ChronoUnit.DAYS)));
        }
        LocalDate month = LocalDate.ofEpochDay(day).withDayOfMonth(1);
        return month.minusMonths(Math.floorMod(month.getLong(ChronoField.PROLEPTIC_MONTH), step.toTotalMonths()));
    }

    private static Tick tick(LocalDate date, Period step) {
        String day = date.toString();
        String month = day.substring(0, day.lastIndexOf('-'));
        String year = month.substring(0, month.lastIndexOf('-'));
        return new Tick(
                date.toEpochDay(),
                step.get(ChronoUnit.DAYS) > 0 ? day : step.get(ChronoUnit.MONTHS) > 0 ? month : year);
    }
}
