package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

class TagNoteTest {

    @Test
    void saysWhatTheNextPersonNeeds() {
        assertThat(TagNote.of(ServiceBook.of(Books.fullNote()), "V1").text(UnitSystem.SI))
                .isEqualTo("""
                Mill House
                vessel: V1
                  diaphragm, 50 L
                gas charge: 1.2 bar
                  with the gas at: 20 degC
                fill pressure: 1.5 bar
                  with the water at: 15 degC
                relief setting: 3 bar
                static head: 8 m
                set on 2020-10-01
                by A. Fitter, Example Heating
                check every year with the water side
                isolated and drained to zero
                """);
        assertThat(TagNote.of(ServiceBook.of(Books.fullNote()), "V1").text(UnitSystem.IP))
                .contains("gas charge: 17.4 psi")
                .contains("with the gas at: 68 degF");
    }

    @Test
    void showsTheLastSetting() {
        assertThat(TagNote.of(Books.fullBook(), "V1").text(UnitSystem.SI))
                .contains("with the gas at: 16 degC")
                .contains("set on 2021-10-01\nby C. Service");
        assertThat(TagNote.of(Books.fullBook(), "V3").text(UnitSystem.SI)).contains("with the gas at: 17 degC");
    }

    @Test
    void eachVesselHasItsOwnTag() {
        assertThat(TagNote.of(Books.fullBook(), "V3").text(UnitSystem.SI))
                .contains("vessel: V3")
                .contains("gas charge: 1.1 bar");
    }

    @Test
    void saysWhatIsNotRecorded() {
        assertThat(TagNote.of(Books.leastBook(), "V1").text(UnitSystem.SI))
                .contains("gas charge: not recorded")
                .contains("fill pressure: not recorded")
                .contains("kind not recorded, not recorded");
    }

    @Test
    void refusesAVesselThatIsNotThere() {
        assertThatExceptionOfType(OutOfRangeException.class).isThrownBy(() -> TagNote.of(Books.fullBook(), "V2"));
        assertThat(Books.serialised(TagNote.of(Books.fullBook(), "V1"))).isEqualTo(TagNote.of(Books.fullBook(), "V1"));
    }
}
