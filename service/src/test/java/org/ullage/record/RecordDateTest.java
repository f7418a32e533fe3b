package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.OutOfRangeException;

class RecordDateTest {

    @Test
    void isYearFirst() {
        RecordDate date = new RecordDate(LocalDate.of(2026, 2, 3));
        assertThat(date).hasToString("2026-02-03").isEqualTo(RecordDate.parse("2026-02-03"));
        assertThat(Books.json(date)).isEqualTo("\"2026-02-03\"");
        assertThat(Books.read("\"2024-02-29\"", RecordDate.class).date()).isEqualTo(LocalDate.of(2024, 2, 29));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "2026", "2026-2-3", "03.02.2026", "2026-02-30", "+12026-01-01", "2026-02-03T10:00", "\u0000"
            })
    void refusesAnythingElse(String text) {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> RecordDate.parse(text))
                .withMessageContaining("as in 2026-11-25");
    }

    @Test
    void refusesAYearOfFiveDigits() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new RecordDate(LocalDate.of(12026, 1, 1)));
    }
}
