package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From text to a quantity, and what is said when that fails. */
class QuantityParsingTest {

    /** Text takes three ways through the parser: gauge, absolute and neither. */
    private static final List<QuantityType<?, ?>> ONE_OF_EACH_BASIS = QuantityType.ALL.stream()
            .filter(type ->
                    List.of("gauge pressure", "absolute pressure", "volume").contains(type.name()))
            .toList();

    static Stream<QuantityType<?, ?>> types() {
        return QuantityType.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void everySpellingOfEveryUnitIsRead(QuantityType<Q, D> type) {
        for (Unit<D> unit : type.units()) {
            Q expected = type.of().of(QuantityType.ALLOWED_BY_ALL, unit);
            Stream.concat(Stream.of(unit.symbol()), unit.otherNames().stream())
                    .forEach(name -> assertThat(type.parse().apply("0.5 " + name + type.suffix()))
                            .as(name)
                            .isEqualTo(expected));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3000 gal",
                "3000gal",
                "  3000   gal  ",
                "\t3000\tgal\n",
                "3000\u00a0gal",
                "3000\u202fgal",
                "+3000 gal",
                "3000. gal",
                "3000.0 gal",
                "3e3 gal",
                "3E+3 gal",
                "30000e-1 gal",
                "3000 US gal",
                "3000 US  gal",
                "3000 gallons",
            })
    void oneVolumeWrittenInManyWays(String text) {
        assertThat(Volume.parse(text)).isEqualTo(Volume.gallons(3000));
    }

    @Test
    void signsAndBareFractionsAreRead() {
        assertThat(GaugePressure.parse("-.5 bar")).isEqualTo(GaugePressure.bar(-0.5));
        assertThat(GaugePressure.parse("+0.5 bar")).isEqualTo(GaugePressure.bar(0.5));
        assertThat(LinearExpansion.parse("6.5e-6 1/degF"))
                .isEqualTo(LinearExpansion.of(6.5e-6, Units.PER_FAHRENHEIT_DEGREE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"180 degF", "180 \u00b0F", "180\u00b0F", "180 F"})
    void degreeSigns(String text) {
        assertThat(Temperature.parse(text)).isEqualTo(Temperature.fahrenheit(180));
        assertThat(Temperature.parse("540 \u00b0R")).isEqualTo(Temperature.kelvins(300));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24.7 psi abs", "24.7 psia", "24.7psia", "24.7 psi  absolute", "24.7 lbf/in2 abs"})
    void absolutePressures(String text) {
        assertThat(AbsolutePressure.parse(text)).isEqualTo(AbsolutePressure.psi(24.7));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 psi", "12 psig", "12 psi gauge", "12 lbf/in2", "12psig"})
    void gaugePressures(String text) {
        assertThat(GaugePressure.parse(text)).isEqualTo(GaugePressure.psi(12));
    }

    @Test
    void barTakesTheSameMarks() {
        assertThat(AbsolutePressure.parse("2.5 bara")).isEqualTo(AbsolutePressure.bar(2.5));
        assertThat(AbsolutePressure.parse("2.5 bar abs")).isEqualTo(AbsolutePressure.bar(2.5));
        assertThat(GaugePressure.parse("2.5 barg")).isEqualTo(GaugePressure.bar(2.5));
        assertThat(AbsolutePressure.parse("101.325 kPa abs")).isEqualTo(AbsolutePressure.STANDARD_ATMOSPHERE);
        assertThat(AbsolutePressure.parse("10 m H2O abs")).isEqualTo(AbsolutePressure.of(10, Units.METRE_OF_WATER));
    }

    @Test
    void aPressureWithoutAbsIsNotAbsolute() {
        refused(() -> AbsolutePressure.parse("10 psi"))
                .hasMessage(
                        "\"10 psi\" cannot be read as absolute pressure: a pressure without \"abs\" after its unit is"
                                + " gauge, and absolute is wanted; write a number and one of the units Pa abs, kPa abs, MPa abs,"
                                + " bar abs, mbar abs, psi abs, mH2O abs, ftH2O abs");
        refused(() -> AbsolutePressure.parse("10 psig")).hasMessageContaining("is gauge, and absolute is wanted");
    }

    @ParameterizedTest
    @ValueSource(strings = {"24.7 psi abs", "24.7 psia", "1.7 bara", "170 kPa absolute"})
    void anAbsolutePressureIsNotGauge(String text) {
        refused(() -> GaugePressure.parse(text))
                .hasMessage("\"" + text
                        + "\" cannot be read as gauge pressure: it is absolute where gauge is wanted; write a"
                        + " number and one of the units Pa, kPa, MPa, bar, mbar, psi, mH2O, ftH2O");
    }

    @Test
    void aPressureDifferenceHasNoBasis() {
        refused(() -> PressureDifference.parse("0.3 bar abs"))
                .hasMessageContaining("the unit \"bar abs\" is not known here");
        refused(() -> PressureDifference.parse("5 psig")).hasMessageContaining("the unit \"psig\" is not known here");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"3,000 gal", "3.000,5 gal", "3 000 gal", "3\u00a0000 gal", "3'000 gal", "1_000 gal", "1.5.3 gal"
            })
    void groupedDigitsAreNotGuessedAt(String text) {
        refused(() -> Volume.parse(text))
                .hasMessage("\"" + text + "\" cannot be read as volume: its number is not a plain decimal (a point for"
                        + " decimals, no commas or blanks between digits); write a number and one of the units m3, L, gal,"
                        + " ft3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "gal",
                "NaN gal",
                "Infinity gal",
                "-Infinity gal",
                "\u22125 gal",
                "--5 gal",
                "+ 5 gal",
                ". gal",
                "e5 gal",
                "\uff13 gal",
                "about 5 gal",
            })
    void aTextThatDoesNotStartWithANumber(String text) {
        refused(() -> Volume.parse(text))
                .hasMessage("\"" + text + "\" cannot be read as volume: it does not start with a number (a point for"
                        + " decimals, a hyphen for minus); write a number and one of the units m3, L, gal, ft3");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", " 5 ", "5.", "1e3"})
    void aMissingUnit(String text) {
        refused(() -> Volume.parse(text)).hasMessageContaining("cannot be read as volume: the unit is missing; write");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0x10 gal", "5 GAL", "5 psi", "5 e gal", "1e gal", "5d gal", "5 gal gal", "5 gal.", "1/2 gal"})
    void anUnknownUnit(String text) {
        refused(() -> Volume.parse(text))
                .hasMessageMatching(
                        "(?s).* cannot be read as volume: the unit \".*\" is not known here; write a number and"
                                + " one of the units m3, L, gal, ft3");
    }

    @Test
    void anUnknownReciprocalUnitIsNotTakenForDigits() {
        refused(() -> LinearExpansion.parse("6.5e-6 1/F"))
                .hasMessageContaining(
                        "the unit \"1/F\" is not known here; write a number and one of the units 1/K, 1/degF");
    }

    @Test
    void aBarePercentSignIsAmbiguous() {
        refused(() -> VolumeFraction.parse("30 %")).hasMessageEndingWith("one of the units m3/m3, vol%");
        refused(() -> MassFraction.parse("30 vol%")).hasMessageEndingWith("one of the units kg/kg, mass%");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e309 gal", "-1e309 gal", "1e5000 gal", "1e99999999999999999999 gal"})
    void aNumberBeyondADouble(String text) {
        refused(() -> Volume.parse(text)).hasMessageContaining("cannot be read as volume: its number is too large;");
    }

    @Test
    void theExceptionKeepsTextAndQuantity() {
        refused(() -> Power.parse("24 kw")).isInstanceOfSatisfying(UnreadableQuantityException.class, refused -> {
            assertThat(refused.text()).isEqualTo("24 kw");
            assertThat(refused.quantity()).isEqualTo("power");
        });
    }

    static Stream<String> longTexts() {
        int length = 200_000;
        return Stream.of(
                "9".repeat(length),
                "9".repeat(length) + "\n!",
                "1." + "0".repeat(length) + "\n!",
                "1e" + "9".repeat(length) + " gal",
                " ".repeat(length),
                "5" + " ".repeat(length) + "!",
                "5 psi" + " ".repeat(length) + "x",
                "5 a" + " a".repeat(length),
                "5 " + "abs ".repeat(length),
                "5 " + "g".repeat(length),
                "x".repeat(length));
    }

    /** A matcher that tries every split of such a text needs minutes; the limit only tells that from a linear one. */
    @ParameterizedTest
    @MethodSource("longTexts")
    void aLongTextIsRefusedAtOnceAndNotRepeatedInFull(String text) {
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> {
            for (QuantityType<?, ?> type : ONE_OF_EACH_BASIS) {
                refused(() -> type.parse().apply(text))
                        .hasMessageStartingWith("\"" + text.substring(0, 60) + "...\" cannot be read as " + type + ": ")
                        .extracting(Throwable::getMessage)
                        .satisfies(message -> assertThat(message).hasSizeLessThan(400));
            }
            refused(() -> GaugePressure.parse(text, AbsolutePressure.STANDARD_ATMOSPHERE));
        });
    }

    @Test
    void aTextOfSixtyCharactersIsRepeatedInFull() {
        String text = "x".repeat(60);
        refused(() -> Volume.parse(text)).hasMessageStartingWith("\"" + text + "\" cannot be read");
        refused(() -> Volume.parse(text + "x")).hasMessageStartingWith("\"" + text + "...\" cannot be read");
    }

    @Test
    void aLongNumberIsReadToItsLastDigit() {
        assertThat(Volume.parse("1." + "0".repeat(100_000) + " L")).isEqualTo(Volume.litres(1));
        assertThat(Volume.parse("0".repeat(100_000) + "7 L")).isEqualTo(Volume.litres(7));
    }

    private static AbstractThrowableAssert<?, ?> refused(ThrowingCallable call) {
        return assertThatThrownBy(call).isInstanceOf(UnreadableQuantityException.class);
    }
}
