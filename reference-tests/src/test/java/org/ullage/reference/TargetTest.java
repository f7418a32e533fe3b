package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

class TargetTest {

    @Test
    void isMetWithinItsToleranceOnly() {
        Target gallons = Target.of(Measure.VOLUME, "578 gal", "0.5 gal");
        assertThat(gallons.isMetBy(Volume.gallons(578.49).si())).isTrue();
        assertThat(gallons.isMetBy(Volume.gallons(577.51).si())).isTrue();
        assertThat(gallons.isMetBy(Volume.gallons(578.51).si())).isFalse();
        assertThat(gallons.isMetBy(Volume.gallons(577.49).si())).isFalse();
        assertThat(gallons.isMetBy(Double.NaN)).isFalse();
    }

    @Test
    void aTieIsMet() {
        assertThat(Target.of(Measure.RATIO, "1.29 %", "0.005 %").isMetBy(0.01285))
                .isTrue();
    }

    @Test
    void aRelativeToleranceIsOfTheFigure() {
        Target ratio = Target.of(Measure.RATIO, "-0.02", "5000 ppm");
        assertThat(ratio.isMetBy(-0.02009)).isTrue();
        assertThat(ratio.isMetBy(-0.02011)).isFalse();
    }

    @Test
    void showsValuesInItsOwnUnit() {
        Target celsius = Target.of(Measure.TEMPERATURE, "104.4 degC", "0.05 K");
        assertThat(celsius.show(Temperature.fahrenheit(220).si())).isEqualTo("104.444 degC");
        assertThat(celsius.showDifference(Temperature.fahrenheit(220).si())).isEqualTo("+0.044");
        assertThat(Target.of(Measure.SPECIFIC_ENTHALPY, "0.115331273E+03 kJ/kg", "5e-7 kJ/kg")
                        .show(115331.2731))
                .isEqualTo("115.33127310 kJ/kg");
        assertThat(Target.of(Measure.RATIO, "4.21 %", "0.005 %").show(0.0421)).isEqualTo("4.2100 %");
    }

    @Test
    void relativeDeviationIsOfTheFigure() {
        assertThat(Target.of(Measure.RATIO, "0.05", "0.1").relativeDeviation(0.06))
                .isEqualTo(0.2, offset(1e-12));
    }
}
