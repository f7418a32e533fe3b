package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Values that are refused, and the words for it. */
class QuantityRangeTest {

    static Stream<QuantityType<?, ?>> types() {
        return QuantityType.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void nothingButFiniteNumbers(QuantityType<Q, D> type) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            refused(() -> type.ofSi().apply(bad))
                    .hasMessageStartingWith(
                            type + " " + bad + " " + type.units().get(0));
            for (Unit<D> unit : type.units()) {
                refused(() -> type.of().of(bad, unit))
                        .hasMessageStartingWith(
                                type + " " + bad + " " + unit + type.suffix() + " is not allowed: it must be ")
                        .hasMessageEndingWith("; check the number and its unit");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void negativeValuesOnlyWhereTheyHaveAMeaning(QuantityType<Q, D> type) {
        if (type.allowsNegative()) {
            assertThat(type.ofSi().apply(-0.5).si()).isEqualTo(-0.5);
        } else {
            refused(() -> type.ofSi().apply(-Double.MIN_VALUE));
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void zeroOnlyWhereItHasAMeaning(QuantityType<Q, D> type) {
        if (type.allowsZero()) {
            assertThat(type.ofSi().apply(0).si()).isZero();
        } else {
            refused(() -> type.ofSi().apply(0));
            assertThat(type.ofSi().apply(Double.MIN_VALUE).si()).isPositive();
        }
    }

    @Test
    void aFiniteNumberMayBeTooLargeInItsUnit() {
        refused(() -> GaugePressure.of(1e305, Units.MEGAPASCAL))
                .hasMessage(
                        "gauge pressure 1.0E305 MPa is not allowed: it must be finite; check the number and its unit");
    }

    /** The product with a numerator overflows here long before the SI value does. */
    @Test
    void aNumberNearOverflowIsConvertedAllTheSame() {
        assertThat(Volume.gallons(1e308).si()).isEqualTo(3.785411784e305);
        assertThat(Density.of(1e307, Units.POUND_PER_CUBIC_FOOT).in(Units.POUND_PER_CUBIC_FOOT))
                .isEqualTo(1e307);
        assertThat(Power.btuPerHour(1.5e308).in(Units.BTU_PER_HOUR)).isEqualTo(1.5e308);
    }

    @Test
    void absolutePressureIsAboveVacuum() {
        refused(() -> AbsolutePressure.psi(0))
                .hasMessage("absolute pressure 0.0 psi abs is not allowed: it must be above 0 psi abs and finite;"
                        + " check the number and its unit");
        refused(() -> AbsolutePressure.parse("-1 bar abs")).hasMessageContaining("-1.0 bar abs is not allowed");
    }

    @Test
    void temperatureIsAboveAbsoluteZeroInTheUnitItWasGivenIn() {
        refused(() -> Temperature.celsius(-300))
                .hasMessage("temperature -300.0 degC is not allowed: it must be above -273.15 degC and finite;"
                        + " check the number and its unit");
        refused(() -> Temperature.fahrenheit(-459.67)).hasMessageContaining("it must be above -459.67 degF and finite");
        refused(() -> Temperature.kelvins(0)).hasMessageContaining("it must be above 0 K and finite");
        assertThat(Temperature.celsius(-273.14).si()).isPositive();
    }

    @Test
    void densityAndSpecificVolumeAreAboveZero() {
        refused(() -> Density.kilogramsPerCubicMetre(0))
                .hasMessageContaining("density 0.0 kg/m3 is not allowed: it must be above 0 kg/m3 and finite");
        refused(() -> SpecificVolume.parse("-0.016 ft3/lb"))
                .hasMessageContaining(
                        "specific volume -0.016 ft3/lb is not allowed: it must be above 0 ft3/lb and finite");
    }

    @Test
    void fractionsGoFromNothingToTheWhole() {
        assertThat(VolumeFraction.percent(0).si()).isZero();
        assertThat(VolumeFraction.percent(100).si()).isEqualTo(1);
        assertThat(MassFraction.percent(100).si()).isEqualTo(1);
        refused(() -> VolumeFraction.percent(Math.nextUp(100.0)))
                .hasMessage("volume fraction 100.00000000000001 vol% is not allowed: it must be from 0 % to 100 %;"
                        + " check the number and its unit");
        refused(() -> MassFraction.percent(-0.1))
                .hasMessageContaining("mass fraction -0.1 mass% is not allowed: it must be from 0 % to 100 %");
    }

    @Test
    void massAndExpansionAreNotNegative() {
        refused(() -> Mass.pounds(-1))
                .hasMessage(
                        "mass -1.0 lb is not allowed: it must be zero or more and finite; check the number and its unit");
        refused(() -> LinearExpansion.perKelvin(-1e-6))
                .hasMessageContaining(
                        "linear expansion coefficient -1.0E-6 1/K is not allowed: it must be zero or more");
    }

    @Test
    void theExceptionKeepsItsParts() {
        refused(() -> Temperature.celsius(-300)).isInstanceOfSatisfying(OutOfRangeException.class, refused -> {
            assertThat(refused.quantity()).isEqualTo("temperature");
            assertThat(refused.value()).isEqualTo("-300.0 degC");
            assertThat(refused.allowed()).isEqualTo("above -273.15 degC and finite");
            assertThat(refused.remedy()).isEqualTo("check the number and its unit");
        });
    }

    private static AbstractThrowableAssert<?, ?> refused(ThrowingCallable call) {
        return assertThatThrownBy(call).isInstanceOf(OutOfRangeException.class);
    }
}
