package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.loop.VolumeRange;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class UncertainTest {

    @Test
    void quantitiesBecomeSpreadsInSi() {
        assertThat(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.kilopascals(5))
                        .spread())
                .isEqualTo(Spread.normal(120_000, 5000));
        assertThat(Uncertain.normal(Temperature.celsius(0), TemperatureDifference.kelvins(2))
                        .spread())
                .isEqualTo(Spread.normal(273.15, 2));
        assertThat(Uncertain.exactly(Volume.cubicMetres(1.5)).spread()).isEqualTo(Spread.exactly(1.5));
    }

    @Test
    void aRangeOfContentsMayBeTrustedInTwoWays() {
        VolumeRange range = new VolumeRange(Volume.cubicMetres(1), Volume.cubicMetres(1.5), Volume.cubicMetres(3));
        assertThat(Uncertain.uniform(range).spread()).isEqualTo(Spread.uniform(1, 3));
        assertThat(Uncertain.triangular(range).spread()).isEqualTo(Spread.triangular(1, 1.5, 3));
        assertThat(Uncertain.uniform(range).spread().standardUncertainty())
                .isGreaterThan(Uncertain.triangular(range).spread().standardUncertainty());
    }

    /** EN ISO 4126-1: opens within 3 % or 0.1 bar of its setting, whichever is more. */
    @Test
    void aValveOpensWithinItsTolerance() {
        Spread opening =
                Uncertain.opening(ReliefValve.iso4126(GaugePressure.bar(3))).spread();
        assertThat(opening.lowest()).isEqualTo(GaugePressure.bar(2.9).si());
        assertThat(opening.highest()).isEqualTo(GaugePressure.bar(3.1).si());
    }

    @Test
    void whatWasStatedIsShownInBothSystems() {
        Uncertain<GaugePressure> pressure = Uncertain.normal(GaugePressure.psi(12), PressureDifference.psi(0.5));
        assertThat(pressure.text(UnitSystem.IP)).isEqualTo("12 psi, normal, standard uncertainty 0.5 psi");
        assertThat(pressure.text(UnitSystem.SI)).contains("bar");
        assertThat(Uncertain.triangular(Volume.litres(1), Volume.litres(2), Volume.litres(4))
                        .toString())
                .isEqualTo("1 L, most likely 2 L, up to 4 L, triangular");
    }
}
