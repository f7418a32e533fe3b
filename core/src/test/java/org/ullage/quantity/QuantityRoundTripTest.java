package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What goes in comes out: through every unit of every type, and through text. */
class QuantityRoundTripTest {

    @Property
    void everyDecimalOfFifteenDigitsComesOutOfEveryUnitAsItWentIn(@ForAll("decimals") double number) {
        QuantityType.ALL.forEach(type -> comesOutAsItWentIn(type, number));
    }

    private static <Q extends Quantity<Q, D>, D> void comesOutAsItWentIn(QuantityType<Q, D> type, double any) {
        // Adding 273.15 or 459.67 costs the last digits: temperatures have their own property.
        if (type.name().equals("temperature")) {
            return;
        }
        double signed = type.allowsNegative() ? any : Math.abs(any);
        for (Unit<D> unit : type.units()) {
            if (type.isFraction() && unit.toSi(signed) > 1) {
                continue;
            }
            assertThat(type.of().of(signed, unit).in(unit))
                    .as("%s in %s", type, unit)
                    .isEqualTo(signed);
        }
    }

    @Property
    void aTemperatureComesOutAsItWentIn(@ForAll("temperatures") BigDecimal decimal) {
        double number = decimal.doubleValue();
        for (Unit<Temperature> unit : Temperature.celsius(0).kind().units()) {
            if (unit.toSi(number) > 0) {
                assertThat(Temperature.of(number, unit).in(unit)).as("%s", unit).isEqualTo(number);
            }
        }
    }

    @Property
    void theTextOfEveryStoredValueParsesBackToAnEqualValue(@ForAll("finite") double any) {
        QuantityType.ALL.forEach(type -> parsesBack(type, any));
    }

    private static <Q extends Quantity<Q, D>, D> void parsesBack(QuantityType<Q, D> type, double any) {
        Q stored = type.ofSi().apply(type.allowed(any));
        assertThat(type.parse().apply(stored.toString())).as("%s", type).isEqualTo(stored);
    }

    @Property
    void theTextOfWhatWasGivenInAUsualUnitParsesBack(@ForAll("decimals") double number) {
        double positive = Math.abs(number);
        assertThat(Volume.parse(Volume.gallons(positive).toString())).isEqualTo(Volume.gallons(positive));
        assertThat(GaugePressure.parse(GaugePressure.psi(number).toString())).isEqualTo(GaugePressure.psi(number));
        assertThat(AbsolutePressure.parse(AbsolutePressure.psi(positive).toString()))
                .isEqualTo(AbsolutePressure.psi(positive));
    }

    /** Two roundings, each at most half the spacing of doubles at the larger pressure: below 1e-9 Pa up to 4 MPa. */
    @Property
    void aGaugePressureComesBackFromAbsolute(
            @ForAll @DoubleRange(min = -50_000, max = 4e6) double gauge,
            @ForAll @DoubleRange(min = 60_000, max = 110_000) double ambient) {
        AbsolutePressure air = AbsolutePressure.ofSi(ambient);
        assertThat(GaugePressure.ofSi(gauge).absolute(air).gauge(air).si()).isCloseTo(gauge, within(1e-9));
    }

    /**
     * 1 to 15 significant digits at scales from 1e-30 to 1e30, not zero. A double tells all decimals of 15 digits apart
     * (IEEE 754), so 15 is the most that can be asked for.
     */
    @Provide
    Arbitrary<Double> decimals() {
        Arbitrary<Long> digits = Arbitraries.longs()
                .between(-999_999_999_999_999L, 999_999_999_999_999L)
                .filter(number -> number != 0);
        return digits.flatMap(number -> Arbitraries.integers()
                .between(-30, 15)
                .map(exponent -> new BigDecimal(BigInteger.valueOf(number), -exponent).doubleValue()));
    }

    /**
     * Eleven decimals, from absolute zero to well above any loop. Half a unit of the eleventh decimal is 88 times the spacing
     * of doubles below 512 and 11 times below 4096, more than the conversions there and back can lose.
     */
    @Provide
    Arbitrary<BigDecimal> temperatures() {
        return Arbitraries.bigDecimals()
                .between(new BigDecimal("-459"), new BigDecimal("3000"))
                .ofScale(11);
    }

    /** Every finite bit pattern: subnormal, near overflow and everything between, and the decimals people write. */
    @Provide
    Arbitrary<Double> finite() {
        Arbitrary<Double> patterns =
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
        Arbitrary<Double> edges = Arbitraries.of(
                0.0,
                -0.0,
                Double.MIN_VALUE,
                -Double.MIN_VALUE,
                2 * Double.MIN_VALUE,
                Double.MIN_NORMAL,
                Math.nextDown(Double.MIN_NORMAL),
                Double.MAX_VALUE,
                -Double.MAX_VALUE,
                Math.nextDown(Double.MAX_VALUE),
                Math.nextUp(273.15),
                Math.nextDown(273.15),
                Math.nextUp(1.0),
                Math.nextDown(1.0));
        return Arbitraries.oneOf(patterns, edges, decimals());
    }
}
