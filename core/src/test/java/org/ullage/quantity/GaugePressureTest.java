package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Gauge and absolute pressure, one made from the other by the pressure of the air. */
class GaugePressureTest {

    private static final AbsolutePressure SEA_LEVEL = AbsolutePressure.STANDARD_ATMOSPHERE;

    @Test
    void absoluteIsGaugePlusAmbient() {
        assertThat(GaugePressure.kilopascals(100).absolute(SEA_LEVEL)).isEqualTo(AbsolutePressure.kilopascals(201.325));
        assertThat(GaugePressure.bar(0).absolute(SEA_LEVEL)).isEqualTo(SEA_LEVEL);
        assertThat(GaugePressure.psi(10).absolute(SEA_LEVEL).text(Units.PSI)).isEqualTo("24.7 psi abs");
    }

    @Test
    void theSameGaugeReadingIsLessOnAMountain() {
        AbsolutePressure mountain = AbsolutePressure.kilopascals(80);
        assertThat(GaugePressure.bar(1).absolute(mountain)).isEqualTo(AbsolutePressure.kilopascals(180));
        assertThat(AbsolutePressure.kilopascals(180).gauge(mountain)).isEqualTo(GaugePressure.bar(1));
    }

    @Test
    void aPartialVacuumIsAGaugePressure() {
        assertThat(AbsolutePressure.bar(0.5).gauge(AbsolutePressure.bar(1))).isEqualTo(GaugePressure.bar(-0.5));
        assertThat(GaugePressure.bar(-0.5).absolute(AbsolutePressure.bar(1))).isEqualTo(AbsolutePressure.bar(0.5));
    }

    @Test
    void atOrBelowVacuumIsRefused() {
        assertThatThrownBy(() -> GaugePressure.bar(-1.2).absolute(SEA_LEVEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "gauge pressure -1.2 bar is not allowed: it must be above vacuum, that is above -1.01325 bar;"
                                + " check the sign, and that a gauge pressure was meant");
        assertThatThrownBy(() -> GaugePressure.kilopascals(-101.325).absolute(SEA_LEVEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("gauge pressure ");
        assertThat(GaugePressure.kilopascals(-101.324).absolute(SEA_LEVEL).si()).isPositive();
    }

    @Test
    void parseWithAmbientTakesBothAndGivesGauge() {
        assertThat(GaugePressure.parse("10 psi", SEA_LEVEL)).isEqualTo(GaugePressure.psi(10));
        assertThat(GaugePressure.parse("10 psig", SEA_LEVEL)).isEqualTo(GaugePressure.psi(10));
        assertThat(GaugePressure.parse("201.325 kPa abs", SEA_LEVEL).text(Units.KILOPASCAL))
                .isEqualTo("100 kPa");
        assertThat(GaugePressure.parse(" 24.7 psia ", SEA_LEVEL))
                .isEqualTo(AbsolutePressure.psi(24.7).gauge(SEA_LEVEL));
        assertThat(GaugePressure.parse("1E0\u00a0bar  absolute", AbsolutePressure.bar(1)))
                .isEqualTo(GaugePressure.bar(0));
    }

    @Test
    void parseWithAmbientRefusesAsTheOthersDo() {
        assertThatThrownBy(() -> GaugePressure.parse("10 gal abs", SEA_LEVEL))
                .isInstanceOf(UnreadableQuantityException.class)
                .hasMessageContaining(
                        "\"10 gal abs\" cannot be read as absolute pressure: the unit \"gal abs\" is not known");
        assertThatThrownBy(() -> GaugePressure.parse("10 gal", SEA_LEVEL))
                .isInstanceOf(UnreadableQuantityException.class)
                .hasMessageContaining("\"10 gal\" cannot be read as gauge pressure: the unit \"gal\" is not known");
        assertThatThrownBy(() -> GaugePressure.parse("0 psi abs", SEA_LEVEL)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void differencesMoveAPressure() {
        assertThat(GaugePressure.bar(3).minus(PressureDifference.bar(0.5))).isEqualTo(GaugePressure.bar(2.5));
        assertThat(GaugePressure.bar(1).plus(PressureDifference.bar(0.5))).isEqualTo(GaugePressure.bar(1.5));
        assertThat(GaugePressure.bar(1).minus(GaugePressure.bar(1.5))).isEqualTo(PressureDifference.bar(-0.5));
        assertThat(AbsolutePressure.bar(2).minus(AbsolutePressure.bar(1.5))).isEqualTo(PressureDifference.bar(0.5));
    }
}
