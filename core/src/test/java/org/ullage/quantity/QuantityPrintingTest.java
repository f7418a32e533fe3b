package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text for people, and text that parses back. */
class QuantityPrintingTest {

    @ParameterizedTest
    @ValueSource(strings = {"12 psi", "0.3 psi", "-2.5 psi", "123456 psi", "14.6959 psi", "0 psi"})
    void whatWasGivenInSixDigitsIsEchoed(String given) {
        assertThat(GaugePressure.parse(given).text(Units.PSI)).isEqualTo(given);
    }

    @Test
    void trailingZerosAreDropped() {
        assertThat(Volume.parse("3000.00 gal").text(Units.US_GALLON)).isEqualTo("3000 gal");
        assertThat(Temperature.parse("180.0 degF").text(Units.FAHRENHEIT)).isEqualTo("180 degF");
    }

    @Test
    void aComputedValueGetsFourDigits() {
        assertThat(Volume.gallons(3000).text(Units.LITRE)).isEqualTo("11360 L");
        assertThat(GaugePressure.psi(12).text(Units.BAR)).isEqualTo("0.8274 bar");
        assertThat(Volume.litres(1).times(1 / 3.0).text(Units.LITRE)).isEqualTo("0.3333 L");
        assertThat(Temperature.fahrenheit(100).text(Units.CELSIUS)).isEqualTo("37.78 degC");
    }

    @Test
    void moreDigitsAreGivenWhenAskedFor() {
        assertThat(Volume.gallons(3000).text(Units.LITRE, 6)).isEqualTo("11356.2 L");
        assertThat(Volume.gallons(3000).text(UnitSystem.SI, 8)).isEqualTo("11356.235 L");
        assertThat(Volume.litres(100).text(UnitSystem.IP, 2)).isEqualTo("26 gal");
    }

    @Test
    void noDigitsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Volume.litres(12.3).text(Units.LITRE, 0))
                .withMessage("significant digits must be 1 or more; it was 0");
    }

    @Test
    void onlyExtremeValuesAreScientific() {
        assertThat(Volume.litres(1_500_000).text(Units.LITRE)).isEqualTo("1500000 L");
        assertThat(Power.btuPerHour(2.5e9).text(Units.BTU_PER_HOUR)).isEqualTo("2500000000 Btu/h");
        assertThat(Volume.litres(0.00002).text(Units.LITRE)).isEqualTo("0.00002 L");
        assertThat(Volume.litres(2e12).text(Units.LITRE)).isEqualTo("2E+12 L");
        assertThat(Volume.litres(2e-9).text(Units.LITRE)).isEqualTo("2E-9 L");
    }

    @Test
    void anAbsolutePressureSaysSo() {
        assertThat(AbsolutePressure.psi(24.7).text(Units.PSI)).isEqualTo("24.7 psi abs");
        assertThat(AbsolutePressure.STANDARD_ATMOSPHERE.text(UnitSystem.IP)).isEqualTo("14.7 psi abs");
        assertThat(AbsolutePressure.bar(1.5)).hasToString("1.5 bar abs");
        assertThat(GaugePressure.bar(1.5)).hasToString("1.5 bar");
        assertThat(PressureDifference.bar(1.5)).hasToString("1.5 bar");
    }

    @Test
    void eachSystemHasItsUsualUnit() {
        assertThat(QuantityType.ALL.stream()
                        .map(type -> type.example().kind().preferred(UnitSystem.SI) + " | "
                                + type.example().kind().preferred(UnitSystem.IP)))
                .containsExactly(
                        "bar | psi",
                        "bar | psi",
                        "bar | psi",
                        "degC | degF",
                        "K | degF",
                        "L | gal",
                        "m | ft",
                        "kg | lb",
                        "kg/m3 | lb/ft3",
                        "m3/kg | ft3/lb",
                        "kW | Btu/h",
                        "m2 | ft2",
                        "N m | lbf in",
                        "cm3 | in3",
                        "cm4 | in4",
                        "MPa | psi",
                        "N | lbf",
                        "mass% | mass%",
                        "vol% | vol%",
                        "1/K | 1/degF");
    }

    @Test
    void theExactTextIsInTheUsualMetricUnitWhereADecimalDoes() {
        assertThat(Volume.cubicMetres(1.2)).hasToString("1200.0 L");
        assertThat(Temperature.celsius(82)).hasToString("82.0 degC");
        assertThat(MassFraction.percent(40)).hasToString("40.0 mass%");
    }

    @Test
    void theExactTextFallsBackToTheCoherentUnit() {
        assertThat(Temperature.kelvins(1e-20)).hasToString("1.0E-20 K");
        assertThat(AbsolutePressure.ofSi(Double.MIN_VALUE)).hasToString("4.9E-324 Pa abs");
        assertThat(Volume.ofSi(Double.MAX_VALUE)).hasToString("1.7976931348623157E308 m3");
    }

    @Test
    void aNumberTooLargeForAUnitIsRefused() {
        Volume huge = Volume.cubicMetres(1e307);
        assertThatThrownBy(() -> huge.in(Units.LITRE))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("volume 1.0E307 m3 is not allowed: it must be small enough for a finite number of L;"
                        + " read it in a larger unit");
        assertThat(huge.in(Units.CUBIC_METRE)).isEqualTo(1e307);
    }

    @Test
    void textIsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Volume.litres(1234.5).text(Units.LITRE)).isEqualTo("1234.5 L");
            assertThat(Volume.litres(1234.5)).hasToString("1234.5 L");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void refusalsPrintBothSystems() {
        assertThat(Temperature.celsius(80).textInBothSystems()).isEqualTo("80 degC (176 degF)");
        assertThat(AbsolutePressure.bar(1).textInBothSystems()).isEqualTo("1 bar abs (14.5 psi abs)");
    }

    @Test
    void differencesShowTheirSign() {
        assertThat(Volume.litres(12.5).signedText(UnitSystem.SI)).isEqualTo("+12.5 L");
        assertThat(Volume.litres(-12.5).signedText(UnitSystem.SI)).isEqualTo("-12.5 L");
        assertThat(Volume.litres(0).signedText(UnitSystem.SI)).isEqualTo("+0 L");
    }
}
