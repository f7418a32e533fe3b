package org.ullage.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class TermTest {

    @Test
    void aQuantityIsPrintedInTheReadersSystem() {
        Term term = Term.of("V_s", Volume.gallons(3000));
        assertThat(term.text(UnitSystem.SI)).isEqualTo("11356.2 L");
        assertThat(term.text(UnitSystem.IP)).isEqualTo("3000 gal");
        assertThat(term.symbol()).isEqualTo("V_s");
        assertThat(term.number()).isEqualTo(Volume.gallons(3000).si());
        assertThat(term.quantity()).isEqualTo(Volume.gallons(3000));
        assertThat(term).hasToString("V_s = 11356.2 L");
    }

    @Test
    void moreDigitsWhereSmallChangesMatter() {
        SpecificVolume volume = SpecificVolume.cubicMetresPerKilogram(0.00100215168);
        assertThat(Term.of("v", volume, 9).text(UnitSystem.SI)).isEqualTo("0.00100215168 m3/kg");
        assertThat(Term.of("v", volume).text(UnitSystem.SI)).isEqualTo("0.00100215 m3/kg");
    }

    @Test
    void aFormulaMayFixTheUnit() {
        Term term = Term.in(Units.FAHRENHEIT, "T", Temperature.celsius(100));
        assertThat(term.text(UnitSystem.SI)).isEqualTo("212 degF");
        assertThat(term.text(UnitSystem.IP)).isEqualTo("212 degF");
        assertThat(term.number()).isEqualTo(373.15);
    }

    @Test
    void eachReaderMayGetAUnitOfTheTrade() {
        Term term = Term.in(Units.MILLIMETRE, Units.INCH, "d", Length.millimetres(12.7));
        assertThat(term.text(UnitSystem.SI)).isEqualTo("12.7 mm");
        assertThat(term.text(UnitSystem.IP)).isEqualTo("0.5 in");
        assertThat(term.quantity()).isEqualTo(Length.millimetres(12.7));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1",
        "-0.5, -0.5",
        "0.123456789, 0.123457",
        "2500000, 2500000",
        "1e300, 1E+300",
        "1.5e-9, 1.5E-9",
        "0, 0"
    })
    void aPureNumberGetsSixDigits(double number, String text) {
        assertThat(Term.number("n", number).text(UnitSystem.SI)).isEqualTo(text);
        assertThat(Term.number("n", number).quantity()).isNull();
    }

    @Test
    void aConstantKeepsAllItsDigits() {
        Source source = Source.published("a book", "p. 1");
        Term pure = Term.of(new Constant("k", 0.14632971213167, "1", source));
        assertThat(pure.text(UnitSystem.IP)).isEqualTo("0.14632971213167");
        assertThat(pure.number()).isEqualTo(0.14632971213167);
        assertThat(Term.of(Units.CONVENTIONAL_WATER_DENSITY).text(UnitSystem.SI))
                .isEqualTo("1000 kg/m3");
        assertThat(Term.of(Units.STANDARD_GRAVITY)).hasToString("g_n = 9.80665 m/s2");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void finiteOnly(double number) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Term.number("n", number))
                .withMessage("n must be a finite number; it was " + number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " "})
    void theSymbolIsNotBlank(String blank) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Term.of(blank, Volume.litres(5)))
                .withMessage("a term must have a symbol; it was blank for 5 L");
    }

    @Test
    void equalityIsByValue() {
        Term term = Term.of("V", Volume.litres(5));
        assertThat(term).isEqualTo(Term.of("V", Volume.litres(5))).hasSameHashCodeAs(Term.of("V", Volume.litres(5)));
        assertThat(term)
                .isNotEqualTo(Term.of("W", Volume.litres(5)))
                .isNotEqualTo(Term.of("V", Volume.litres(6)))
                .isNotEqualTo(Term.number("V", 0.005))
                .isNotEqualTo(Term.in(Units.CUBIC_METRE, "V", Volume.litres(5)));
    }
}
