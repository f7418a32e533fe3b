package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.PipeStandard;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

class StubSectionTest {

    /** Section modulus and metal area of Sch 40 pipe as pipe tables print them (from memory). */
    @ParameterizedTest
    @CsvSource({"3/4, 0.0705, 0.333", "1, 0.1328, 0.494", "2, 0.561, 1.075"})
    void plainSteelPipe(String size, double modulus, double area) {
        StubSection section = StubSection.plain(PipeStandard.ASME_B36_10_SCH_40.size(size));
        assertThat(section.modulus().in(Units.SECTION_CUBIC_INCH)).isCloseTo(modulus, within(1e-3 * modulus));
        assertThat(section.area().in(Units.SQUARE_INCH)).isCloseTo(area, within(1e-3));
    }

    /** Threads per inch of ASME B1.20.1 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1/8, 27",
        "1/4, 18",
        "3/8, 18",
        "1/2, 14",
        "3/4, 14",
        "1, 11.5",
        "1-1/4, 11.5",
        "1-1/2, 11.5",
        "2, 11.5",
        "2-1/2, 8",
        "4, 8",
        "12, 8"
    })
    void rootOfTheThread(String size, double threadsPerInch) {
        StubSection plain = StubSection.plain(PipeStandard.ASME_B36_10_SCH_80.size(size));
        StubSection threaded = StubSection.threaded(PipeStandard.ASME_B36_10_SCH_80.size(size));
        assertThat(plain.outside().minus(threaded.outside()).in(Units.INCH))
                .isCloseTo(1.6 / threadsPerInch, within(1e-9));
        assertThat(threaded.bore()).isEqualTo(plain.bore());
        assertThat(threaded.modulus()).isLessThan(plain.modulus());
        assertThat(threaded.source().provenance()).isEqualTo(Provenance.FROM_MEMORY);
        assertThat(threaded.source().toString()).contains("2 x 0.8 / " + threadsPerInch);
    }

    @Test
    void copperHasNoPipeThread() {
        assertThatThrownBy(() -> StubSection.threaded(PipeStandard.ASTM_B88_L.size("3/4")))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("NPT");
        assertThatThrownBy(() -> StubSection.threaded(PipeStandard.EN_10255_HEAVY.size("DN 20")))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource({"20, 10", "20, 0", "20, -1", "20, 11"})
    void wallMustLeaveARing(double outside, double wall) {
        assertThatThrownBy(() -> StubSection.of("own", Length.millimetres(outside), Length.millimetres(wall)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
