package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class GaugeTest {

    private static final Map<String, Unit<Pressure>> UNITS = Map.of("bar", Units.BAR, "psi", Units.PSI);

    /** Computed from the limits of ASME B40.100 and EN 837-1, rounded to 0.001 bar, 0.1 psi and 0.1 %; a reading at 25 % is in the middle half. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    psi, 12, 30, 40, grade 1A, 0.3, 2.5, yes
                    psi, 12, 30, 40, grade A, 0.3, 2.5, yes
                    psi, 12, 30, 40, grade B, 0.6, 5, yes
                    psi, 12, 30, 40, grade C, 0.9, 7.5, yes
                    psi, 12, 60, 20, grade 1A, 0.6, 5, no
                    psi, 12, 60, 20, grade B, 1.8, 15, no
                    psi, 12, 60, 20, grade C, 2.4, 20, no
                    psi, 12, 100, 12, grade A, 2, 16.7, no
                    psi, 12, 100, 12, grade B, 3, 25, no
                    psi, 12, 100, 12, grade C, 4, 33.3, no
                    psi, 12, 160, 7.5, grade 1A, 1.6, 13.3, no
                    psi, 12, 160, 7.5, grade A, 3.2, 26.7, no
                    psi, 12, 160, 7.5, grade B, 4.8, 40, no
                    psi, 25, 30, 83.3, grade 1A, 0.3, 1.2, no
                    psi, 25, 30, 83.3, grade A, 0.6, 2.4, no
                    psi, 25, 30, 83.3, grade C, 1.2, 4.8, no
                    psi, 25, 60, 41.7, grade 1A, 0.6, 2.4, yes
                    psi, 25, 60, 41.7, grade B, 1.2, 4.8, yes
                    psi, 25, 60, 41.7, grade C, 1.8, 7.2, yes
                    psi, 25, 100, 25, grade 1A, 1, 4, yes
                    psi, 25, 100, 25, grade A, 1, 4, yes
                    psi, 25, 100, 25, grade B, 2, 8, yes
                    psi, 30, 60, 50, grade 1A, 0.6, 2, yes
                    psi, 30, 60, 50, grade A, 0.6, 2, yes
                    psi, 30, 60, 50, grade C, 1.8, 6, yes
                    psi, 30, 100, 30, grade 1A, 1, 3.3, yes
                    psi, 30, 100, 30, grade A, 1, 3.3, yes
                    psi, 30, 100, 30, grade C, 3, 10, yes
                    psi, 30, 160, 18.8, grade 1A, 1.6, 5.3, no
                    psi, 30, 160, 18.8, grade A, 3.2, 10.7, no
                    psi, 30, 160, 18.8, grade C, 6.4, 21.3, no
                    psi, 50, 60, 83.3, grade B, 1.8, 3.6, no
                    psi, 50, 60, 83.3, grade C, 2.4, 4.8, no
                    psi, 50, 100, 50, grade 1A, 1, 2, yes
                    psi, 50, 100, 50, grade A, 1, 2, yes
                    psi, 50, 100, 50, grade C, 3, 6, yes
                    psi, 50, 200, 25, grade 1A, 2, 4, yes
                    psi, 50, 200, 25, grade A, 2, 4, yes
                    psi, 50, 200, 25, grade B, 4, 8, yes
                    psi, 50, 200, 25, grade C, 6, 12, yes
                    bar, 1, 4, 25, class 1, 0.04, 4, yes
                    bar, 1, 4, 25, class 1.6, 0.064, 6.4, yes
                    bar, 1, 6, 16.7, class 1, 0.06, 6, no
                    bar, 1, 6, 16.7, class 1.6, 0.096, 9.6, no
                    bar, 1, 6, 16.7, class 2.5, 0.15, 15, no
                    bar, 1, 10, 10, class 1, 0.1, 10, no
                    bar, 1, 10, 10, class 1.6, 0.16, 16, no
                    bar, 1, 10, 10, class 2.5, 0.25, 25, no
                    bar, 1.5, 4, 37.5, class 1.6, 0.064, 4.3, yes
                    bar, 1.5, 4, 37.5, class 2.5, 0.1, 6.7, yes
                    bar, 1.5, 6, 25, class 1, 0.06, 4, yes
                    bar, 1.5, 6, 25, class 1.6, 0.096, 6.4, yes
                    bar, 1.5, 6, 25, class 2.5, 0.15, 10, yes
                    bar, 1.5, 10, 15, class 1, 0.1, 6.7, no
                    bar, 1.5, 10, 15, class 1.6, 0.16, 10.7, no
                    bar, 1.5, 10, 15, class 2.5, 0.25, 16.7, no
                    bar, 2.5, 4, 62.5, class 1, 0.04, 1.6, yes
                    bar, 2.5, 4, 62.5, class 2.5, 0.1, 4, yes
                    bar, 2.5, 6, 41.7, class 1, 0.06, 2.4, yes
                    bar, 2.5, 6, 41.7, class 2.5, 0.15, 6, yes
                    bar, 2.5, 10, 25, class 1, 0.1, 4, yes
                    bar, 2.5, 10, 25, class 1.6, 0.16, 6.4, yes
                    bar, 2.5, 10, 25, class 2.5, 0.25, 10, yes
                    """)
    void errorsAtTypicalReadings(
            String unit,
            double reading,
            double span,
            double position,
            String grade,
            double error,
            double percent,
            String middle) {
        Unit<Pressure> in = UNITS.get(unit);
        GaugeClass accuracy = GaugeClasses.all().stream()
                .filter(each -> each.grade().equals(grade))
                .findFirst()
                .orElseThrow();
        Gauge gauge = Gauge.of(GaugePressure.of(0, in), GaugePressure.of(span, in), accuracy);
        GaugePressure read = GaugePressure.of(reading, in);
        assertThat(100 * gauge.range().position(read)).isCloseTo(position, within(0.0501));
        assertThat(gauge.errorAt(read).in(in)).isCloseTo(error, within(1e-9));
        assertThat(100 * gauge.errorOfReading(read)).isCloseTo(percent, within(0.0501));
        assertThat(gauge.range().inMiddleHalf(read)).isEqualTo(middle.equals("yes"));
    }

    @ParameterizedTest
    @CsvSource({"0, 3", "24.9, 3", "25, 2", "50, 2", "75, 2", "75.1, 3", "100, 3"})
    void bothEndsOfTheMiddleHalfBelongToIt(double psi, double error) {
        Gauge gauge = Gauge.of(GaugePressure.psi(0), GaugePressure.psi(100), GaugeClasses.ASME_B);
        assertThat(gauge.errorAt(GaugePressure.psi(psi)).in(Units.PSI)).isCloseTo(error, within(1e-9));
    }

    @Test
    void aCompoundGaugeCountsItsWholeSpan() {
        // -1 to 3 bar: 4 bar of span, 0 bar at 25 %
        Gauge gauge = Gauge.of(GaugePressure.bar(-1), GaugePressure.bar(3), GaugeClasses.EN_2_5);
        assertThat(gauge.errorAt(GaugePressure.bar(0))).isEqualTo(PressureDifference.bar(0.1));
        assertThat(gauge.range().inMiddleHalf(GaugePressure.bar(0))).isTrue();
        assertThat(gauge.errorOfReading(GaugePressure.bar(-0.5))).isCloseTo(0.2, within(1e-12));
        assertThatThrownBy(() -> gauge.errorOfReading(GaugePressure.bar(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aReadingOffTheDialIsRefused() {
        Gauge gauge = Gauge.of(GaugePressure.psi(0), GaugePressure.psi(30), GaugeClasses.ASME_B);
        assertThat(gauge.errorAt(GaugePressure.psi(30)).in(Units.PSI)).isCloseTo(0.9, within(1e-9));
        assertThatThrownBy(() -> gauge.errorAt(GaugePressure.psi(31)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("31 psi")
                .hasMessageContaining("take a gauge that covers it");
        assertThatThrownBy(() -> gauge.errorAt(GaugePressure.psi(-1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aDialThatEndsBelowItsStartIsRefused() {
        assertThatThrownBy(() -> Gauge.of(GaugePressure.bar(4), GaugePressure.bar(4), GaugeClasses.EN_1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("highest pressure on the dial");
    }

    @Test
    void textNamesTheDialInBothSystems() {
        Gauge gauge = Gauge.of(GaugePressure.psi(0), GaugePressure.psi(100), GaugeClasses.ASME_B);
        assertThat(gauge.text(UnitSystem.IP)).isEqualTo("0 psi to 100 psi (0 bar to 6.895 bar), ASME B40.100 grade B");
    }
}
