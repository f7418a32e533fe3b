package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The contract all quantity types share: factories, equality, order, zero, streams. */
class QuantityTest {

    static Stream<QuantityType<?, ?>> types() {
        return QuantityType.ALL.stream();
    }

    @Test
    void everyQuantityTypeIsTestedHere() throws Exception {
        List<Class<?>> tested = QuantityType.ALL.stream()
                .<Class<?>>map(type -> type.example().getClass())
                .toList();
        List<Class<?>> dimensions = Stream.of(Units.class.getFields())
                .filter(field -> field.getType() == Unit.class)
                .<Class<?>>map(QuantityTest::dimension)
                .distinct()
                .toList();
        assertThat(tested)
                .containsAll(dimensions.stream()
                        .filter(type -> type != Pressure.class)
                        .toList());
        assertThat(tested).contains(Pressure.class.getPermittedSubclasses());
    }

    private static Class<?> dimension(Field unit) {
        return (Class<?>) ((ParameterizedType) unit.getGenericType()).getActualTypeArguments()[0];
    }

    @Test
    void namedFactoriesTakeTheUnitTheyName() {
        assertThat(GaugePressure.bar(2)).isEqualTo(GaugePressure.of(2, Units.BAR));
        assertThat(GaugePressure.kilopascals(2)).isEqualTo(GaugePressure.of(2, Units.KILOPASCAL));
        assertThat(GaugePressure.psi(2)).isEqualTo(GaugePressure.of(2, Units.PSI));
        assertThat(AbsolutePressure.bar(2)).isEqualTo(AbsolutePressure.of(2, Units.BAR));
        assertThat(AbsolutePressure.kilopascals(2)).isEqualTo(AbsolutePressure.of(2, Units.KILOPASCAL));
        assertThat(AbsolutePressure.psi(2)).isEqualTo(AbsolutePressure.of(2, Units.PSI));
        assertThat(PressureDifference.bar(2)).isEqualTo(PressureDifference.of(2, Units.BAR));
        assertThat(PressureDifference.kilopascals(2)).isEqualTo(PressureDifference.of(2, Units.KILOPASCAL));
        assertThat(PressureDifference.psi(2)).isEqualTo(PressureDifference.of(2, Units.PSI));
        assertThat(Temperature.celsius(2)).isEqualTo(Temperature.of(2, Units.CELSIUS));
        assertThat(Temperature.fahrenheit(2)).isEqualTo(Temperature.of(2, Units.FAHRENHEIT));
        assertThat(Temperature.kelvins(2)).isEqualTo(Temperature.of(2, Units.KELVIN));
        assertThat(TemperatureDifference.kelvins(2)).isEqualTo(TemperatureDifference.of(2, Units.KELVIN_DIFFERENCE));
        assertThat(TemperatureDifference.fahrenheitDegrees(2))
                .isEqualTo(TemperatureDifference.of(2, Units.FAHRENHEIT_DIFFERENCE));
        assertThat(Volume.litres(2)).isEqualTo(Volume.of(2, Units.LITRE));
        assertThat(Volume.cubicMetres(2)).isEqualTo(Volume.of(2, Units.CUBIC_METRE));
        assertThat(Volume.gallons(2)).isEqualTo(Volume.of(2, Units.US_GALLON));
        assertThat(Length.metres(2)).isEqualTo(Length.of(2, Units.METRE));
        assertThat(Length.millimetres(2)).isEqualTo(Length.of(2, Units.MILLIMETRE));
        assertThat(Length.feet(2)).isEqualTo(Length.of(2, Units.FOOT));
        assertThat(Mass.kilograms(2)).isEqualTo(Mass.of(2, Units.KILOGRAM));
        assertThat(Mass.pounds(2)).isEqualTo(Mass.of(2, Units.POUND));
        assertThat(Density.kilogramsPerCubicMetre(2)).isEqualTo(Density.of(2, Units.KILOGRAM_PER_CUBIC_METRE));
        assertThat(SpecificVolume.cubicMetresPerKilogram(2))
                .isEqualTo(SpecificVolume.of(2, Units.CUBIC_METRE_PER_KILOGRAM));
        assertThat(Power.kilowatts(2)).isEqualTo(Power.of(2, Units.KILOWATT));
        assertThat(Power.btuPerHour(2)).isEqualTo(Power.of(2, Units.BTU_PER_HOUR));
        assertThat(Force.newtons(2)).isEqualTo(Force.of(2, Units.NEWTON));
        assertThat(Force.poundsForce(2)).isEqualTo(Force.of(2, Units.POUND_FORCE));
        assertThat(MassFraction.percent(2)).isEqualTo(MassFraction.of(2, Units.MASS_PERCENT));
        assertThat(VolumeFraction.percent(2)).isEqualTo(VolumeFraction.of(2, Units.VOLUME_PERCENT));
        assertThat(LinearExpansion.perKelvin(2)).isEqualTo(LinearExpansion.of(2, Units.PER_KELVIN));
        assertThat(LinearExpansion.perFahrenheitDegree(2))
                .isEqualTo(LinearExpansion.of(2, Units.PER_FAHRENHEIT_DEGREE));
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void theFirstUnitIsTheCoherentOne(QuantityType<Q, D> type) {
        Unit<D> coherent = type.units().get(0);
        assertThat(type.of().of(QuantityType.ALLOWED_BY_ALL, coherent).si()).isEqualTo(QuantityType.ALLOWED_BY_ALL);
        assertThat(type.example().in(coherent)).isEqualTo(QuantityType.ALLOWED_BY_ALL);
    }

    @Test
    void equalAcrossUnitsButNeverAcrossTypes() {
        assertThat(Length.feet(1)).isEqualTo(Length.of(12, Units.INCH)).isEqualTo(Length.millimetres(304.8));
        assertThat((Object) GaugePressure.bar(1))
                .isNotEqualTo(AbsolutePressure.bar(1))
                .isNotEqualTo(PressureDifference.bar(1))
                .isNotEqualTo(null)
                .isNotEqualTo("1 bar");
        assertThat((Object) Temperature.kelvins(40)).isNotEqualTo(TemperatureDifference.kelvins(40));
        assertThat((Object) MassFraction.percent(30)).isNotEqualTo(VolumeFraction.percent(30));
    }

    @Test
    void sortsFromLowToHigh() {
        assertThat(new TreeSet<>(List.of(GaugePressure.bar(3), GaugePressure.psi(12), GaugePressure.bar(-0.5))))
                .containsExactly(GaugePressure.bar(-0.5), GaugePressure.psi(12), GaugePressure.bar(3));
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void negativeZeroIsZero(QuantityType<Q, D> type) {
        if (!type.allowsZero()) {
            assertThatThrownBy(() -> type.ofSi().apply(-0.0)).isInstanceOf(OutOfRangeException.class);
            return;
        }
        Q zero = type.ofSi().apply(-0.0);
        assertThat(Double.doubleToRawLongBits(zero.si())).isZero();
        assertThat(zero)
                .isEqualTo(type.ofSi().apply(0.0))
                .hasSameHashCodeAs(type.ofSi().apply(0.0));
        assertThat(zero).isEqualByComparingTo(type.of().of(-0.0, type.units().get(0)));
        assertThat(zero.toString()).startsWith("0.0 ");
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void aStreamBringsItBack(QuantityType<Q, D> type) throws Exception {
        Q written = type.ofSi().apply(1 / 3.0);
        assertThat(read(bytes(written))).isEqualTo(written);
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void aTamperedStreamIsRefused(QuantityType<Q, D> type) throws Exception {
        byte[] stream = bytes(type.ofSi().apply(1 / 3.0));
        int at = indexOf(
                stream, ByteBuffer.allocate(Double.BYTES).putDouble(1 / 3.0).array());
        ByteBuffer.wrap(stream).putDouble(at, Double.NaN);
        assertThatThrownBy(() -> read(stream))
                .isInstanceOf(InvalidObjectException.class)
                .hasMessageStartingWith(type + " NaN ")
                .hasCauseInstanceOf(OutOfRangeException.class);
    }

    private static byte[] bytes(Object object) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(object);
        }
        return bytes.toByteArray();
    }

    private static Object read(byte[] stream) throws IOException, ClassNotFoundException {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(stream))) {
            return in.readObject();
        }
    }

    private static int indexOf(byte[] all, byte[] part) {
        for (int start = 0; start + part.length <= all.length; start++) {
            if (ByteBuffer.wrap(all, start, part.length).equals(ByteBuffer.wrap(part))) {
                return start;
            }
        }
        throw new AssertionError("the stream does not hold the value");
    }

    @Test
    void stressIsMomentOverSectionModulus() {
        // 100 N m on 10 cm3: 10 N/mm2
        assertThat(SectionModulus.of(10, Units.SECTION_CUBIC_CENTIMETRE)
                        .stress(Moment.of(100, Units.NEWTON_METRE))
                        .si())
                .isCloseTo(1e7, within(1e-3));
    }
}
