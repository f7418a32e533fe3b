package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Density, specific volume, mass and weight. */
class DensityTest {

    @Test
    void densityAndSpecificVolumeAreReciprocal() {
        assertThat(Density.kilogramsPerCubicMetre(800).specificVolume())
                .isEqualTo(SpecificVolume.cubicMetresPerKilogram(1 / 800.0));
        assertThat(SpecificVolume.of(1.25, Units.LITRE_PER_KILOGRAM).density())
                .isEqualTo(Density.kilogramsPerCubicMetre(800));
        assertThat(Density.of(62.4, Units.POUND_PER_CUBIC_FOOT).specificVolume().text(UnitSystem.IP))
                .isEqualTo("0.01603 ft3/lb");
    }

    @Test
    void aReciprocalBeyondADoubleIsRefused() {
        assertThatThrownBy(() -> Density.ofSi(Double.MIN_VALUE).specificVolume())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("specific volume Infinity m3/kg");
        assertThatThrownBy(() -> SpecificVolume.ofSi(Double.MIN_VALUE).density())
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("density Infinity kg/m3");
    }

    @Test
    void densityTimesVolumeIsMass() {
        assertThat(Density.kilogramsPerCubicMetre(1000).times(Volume.litres(18)))
                .isEqualTo(Mass.kilograms(18));
        assertThatThrownBy(() -> Density.kilogramsPerCubicMetre(1000).times(Volume.litres(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("mass -1.0 kg is not allowed");
    }

    @Test
    void weightIsUnderStandardGravity() {
        assertThat(Mass.kilograms(100).weight().in(Units.NEWTON)).isEqualTo(980.665);
        assertThat(Mass.pounds(150).weight().text(Units.POUND_FORCE)).isEqualTo("150 lbf");
    }
}
