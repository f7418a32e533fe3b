package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A temperature has a zero of its own; a difference has not. */
class TemperatureTest {

    @ParameterizedTest
    @CsvSource({
        "0, 32, 273.15, 491.67",
        "100, 212, 373.15, 671.67",
        "-40, -40, 233.15, 419.67",
        "20, 68, 293.15, 527.67"
    })
    void fourScalesMeet(double celsius, double fahrenheit, double kelvins, double rankine) {
        Temperature temperature = Temperature.celsius(celsius);
        assertThat(Temperature.fahrenheit(fahrenheit)).isEqualTo(temperature);
        // 273.15 and 671.67 have no exact binary value: one rounding more on the way from another zero.
        assertThat(temperature.si()).isCloseTo(kelvins, within(Math.ulp(kelvins)));
        assertThat(Temperature.of(rankine, Units.RANKINE).si()).isCloseTo(kelvins, within(Math.ulp(kelvins)));
        assertThat(temperature.in(Units.FAHRENHEIT)).isEqualTo(fahrenheit);
    }

    @Test
    void aDifferenceHasNoOffset() {
        assertThat(TemperatureDifference.fahrenheitDegrees(180)).isEqualTo(TemperatureDifference.kelvins(100));
        assertThat(TemperatureDifference.parse("180 degF")).isEqualTo(TemperatureDifference.parse("100 degC"));
        assertThat(TemperatureDifference.parse("180 R")).isEqualTo(TemperatureDifference.kelvins(100));
        assertThat(Temperature.parse("180 degF").text(Units.CELSIUS)).isEqualTo("82.22 degC");
    }

    @Test
    void differencesMoveATemperature() {
        TemperatureDifference rise = Temperature.celsius(82).minus(Temperature.celsius(10));
        assertThat(rise.text(Units.KELVIN_DIFFERENCE)).isEqualTo("72 K");
        assertThat(rise.text(UnitSystem.IP)).isEqualTo("129.6 degF");
        assertThat(Temperature.celsius(10).plus(rise)).isEqualTo(Temperature.celsius(82));
        assertThat(Temperature.celsius(10).minus(Temperature.celsius(82))).isEqualTo(rise.times(-1));
    }

    @Test
    void aFallBelowAbsoluteZeroIsRefused() {
        assertThatThrownBy(() -> Temperature.kelvins(100).plus(TemperatureDifference.kelvins(-101)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("temperature -1.0 K is not allowed: it must be above 0 K and finite;"
                        + " check the number and its unit");
    }
}
