package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeamCaseTest {

    /**
     * Static load conversions of metal-framing engineering data, two digits each. The end load of a cantilever is printed as 0.12 for
     * 1/8.
     */
    @ParameterizedTest
    @CsvSource({
        "SIMPLE_UNIFORM, 1, 1",
        "SIMPLE_QUARTER_POINTS, 1, 1.1",
        "FIXED_UNIFORM, 1.5, 0.3",
        "CANTILEVER_UNIFORM, 0.25, 2.4",
        "CANTILEVER_END, 0.12, 3.2",
        "TWO_SPANS_UNIFORM_ON_ONE, 1.3, 0.92",
        "TWO_SPANS_UNIFORM_ON_BOTH, 1, 0.42",
        "TWO_SPANS_CENTRE_OF_ONE, 0.62, 0.71",
    })
    void printedFactors(BeamCase loading, double load, double deflection) {
        double printed = load > 1 ? 0.05 : 0.005;
        assertThat(loading.loadFactor()).isCloseTo(load, within(printed + 1e-9));
        assertThat(loading.deflectionFactor()).isCloseTo(deflection, within(0.005));
    }

    /**
     * One printed deflection factor for a load at the centre is 1.25, the reciprocal of what theory gives: half the load bends
     * P L^3 / 48 against 5 W L^3 / 384, which is 0.8.
     */
    @Test
    void loadAtTheCentre() {
        assertThat(BeamCase.SIMPLE_CENTRE.loadFactor()).isEqualTo(0.5);
        assertThat(BeamCase.SIMPLE_CENTRE.deflectionFactor()).isCloseTo(0.8, within(1e-12));
        assertThat(1 / BeamCase.SIMPLE_CENTRE.deflectionFactor()).isCloseTo(1.25, within(1e-12));
    }

    /** Two rows by theory: fixed ends with P L / 8 and P L^3 / 192; two spans with 3/16 P L. */
    @ParameterizedTest
    @CsvSource({"FIXED_CENTRE, 1, 0.4", "TWO_SPANS_CENTRE_OF_BOTH, 0.6667, 0.477"})
    void factorsByTheory(BeamCase loading, double load, double deflection) {
        assertThat(loading.loadFactor()).isCloseTo(load, within(5e-5));
        assertThat(loading.deflectionFactor()).isCloseTo(deflection, within(5e-4));
    }
}
