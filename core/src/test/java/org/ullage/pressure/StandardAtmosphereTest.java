package org.ullage.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

class StandardAtmosphereTest {

    /** Own evaluation of the 1976 formula with geopotential altitude, to half of its last digit. */
    @ParameterizedTest
    @CsvSource({
        "0,101.325",
        "500,95.461",
        "1000,89.875",
        "1500,84.556",
        "2000,79.495",
        "2500,74.683",
        "3000,70.109",
        "3500,65.764",
        "4000,61.640",
    })
    void followsTheMetreTable(double metres, double kilopascals) {
        assertThat(StandardAtmosphere.at(Length.metres(metres)).in(Units.KILOPASCAL))
                .isCloseTo(kilopascals, within(0.0005));
    }

    /** The same in inch-pound, to half of its last digit. */
    @ParameterizedTest
    @CsvSource({
        "0,14.6959",
        "1000,14.1726",
        "2000,13.6644",
        "3000,13.1711",
        "4000,12.6923",
        "5000,12.2277",
        "6000,11.7770",
        "7000,11.3398",
        "8000,10.9159",
        "9000,10.5049",
        "10000,10.1065",
        "11000,9.7204",
        "12000,9.3464",
    })
    void followsTheFootTable(double feet, double psi) {
        assertThat(StandardAtmosphere.at(Length.feet(feet)).in(Units.PSI)).isCloseTo(psi, within(0.00005));
    }

    /** ASHRAE Handbook, Fundamentals, ch. 1 table 1, second-hand; its exponent is rounded, hence 0.03 %. */
    @ParameterizedTest
    @CsvSource({"-500,107478", "500,95461", "1000,89875", "4000,61640"})
    void agreesWithTheHandbookTable(double metres, double pascals) {
        assertThat(StandardAtmosphere.at(Length.metres(metres)).si()).isCloseTo(pascals, within(pascals * 3e-4));
    }

    @Test
    void isTheStandardAtmosphereAtSeaLevel() {
        assertThat(StandardAtmosphere.at(Length.metres(0))).isEqualTo(AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    @Test
    void answersAtBothEndsOfItsRange() {
        assertThat(StandardAtmosphere.at(StandardAtmosphere.LOWEST).si())
                .isGreaterThan(StandardAtmosphere.at(StandardAtmosphere.HIGHEST).si());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.01, 11_000.01, 1e300})
    void refusesOtherAltitudesWithTheRange(double metres) {
        assertThatThrownBy(() -> StandardAtmosphere.at(Length.metres(metres)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("altitude")
                .hasMessageContaining("from -500 m (-1640 ft) to 11000 m (36090 ft)");
    }
}
