package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ullage.report.Ticks.Tick;

class DateTicksTest {

    @Property
    void coverTheDates(
            @ForAll @IntRange(min = -700_000, max = 370_000) int first,
            @ForAll @IntRange(min = 1, max = 6_000) int days,
            @ForAll @IntRange(min = 2, max = 12) int most) {
        List<Tick> ticks =
                DateTicks.covering(new Extent(first, first + days), most).list();
        assertThat(ticks).hasSizeBetween(2, most + 1);
        assertThat(ticks.get(0).value()).isLessThanOrEqualTo(first);
        assertThat(ticks.get(ticks.size() - 1).value()).isGreaterThanOrEqualTo(first + days);
        assertThat(ticks)
                .allSatisfy(tick -> assertThat(
                                LocalDate.ofEpochDay((long) tick.value()).toString())
                        .startsWith(tick.label()));
        assertThat(ticks.stream().map(Tick::label)).doesNotHaveDuplicates();
    }

    @Example
    void beginAtRoundDates() {
        assertThat(labels("2019-10-03", "2023-10-02", 6))
                .containsExactly("2019", "2020", "2021", "2022", "2023", "2024");
        assertThat(labels("2024-02-20", "2024-08-01", 3)).containsExactly("2024-01", "2024-04", "2024-07", "2024-10");
        // Mondays
        assertThat(labels("2024-05-01", "2024-05-15", 4))
                .containsExactly("2024-04-29", "2024-05-06", "2024-05-13", "2024-05-20");
        assertThat(labels("2024-02-28", "2024-03-01", 4)).containsExactly("2024-02-28", "2024-02-29", "2024-03-01");
    }

    private static List<String> labels(String from, String to, int most) {
        Extent extent = new Extent(
                LocalDate.parse(from).toEpochDay(), LocalDate.parse(to).toEpochDay());
        return DateTicks.covering(extent, most).list().stream().map(Tick::label).toList();
    }
}
