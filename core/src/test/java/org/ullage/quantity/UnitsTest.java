package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.provenance.Provenance;

class UnitsTest {

    static Stream<QuantityType<?, ?>> types() {
        return QuantityType.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void noSpellingMeansTwoUnitsOfOneType(QuantityType<Q, D> type) {
        List<String> spellings = type.units().stream()
                .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.otherNames().stream()))
                .toList();
        assertThat(spellings).doesNotHaveDuplicates();
    }

    @Test
    void everyUnitIsReadBySomeType() throws Exception {
        Set<Unit<?>> read = new HashSet<>();
        QuantityType.ALL.forEach(type -> read.addAll(type.units()));
        List<Unit<?>> declared = new ArrayList<>();
        for (Field field : Units.class.getFields()) {
            if (field.get(null) instanceof Unit<?> unit) {
                declared.add(unit);
            }
        }
        assertThat(declared).isNotEmpty();
        assertThat(read).containsAll(declared);
    }

    @Test
    void everyUnitPrintsItsSymbolAndNamesItsSource() {
        QuantityType.ALL.stream().flatMap(type -> type.units().stream()).forEach(unit -> {
            assertThat(unit).hasToString(unit.symbol());
            assertThat(unit.source().document()).isNotBlank();
        });
        assertThat(Units.US_GALLON.otherNames()).containsExactly("US gal", "gallon", "gallons");
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void aStreamBringsAUnitBack(QuantityType<Q, D> type) throws Exception {
        for (Unit<D> unit : type.units()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
                out.writeObject(unit);
            }
            try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
                assertThat(in.readObject()).isEqualTo(unit).hasSameHashCodeAs(unit);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void unitsOfOneTypeAreAllDifferent(QuantityType<Q, D> type) {
        assertThat(type.units()).doesNotHaveDuplicates().doesNotContainNull();
        assertThat((Object) type.units().get(0))
                .isNotEqualTo(type.units().get(0).symbol());
    }

    /** The calculation path: the same number as {@code in}, but for the last digits that the search tidies up. */
    @ParameterizedTest
    @MethodSource("types")
    <Q extends Quantity<Q, D>, D> void numberOfIsTheUntidiedNumber(QuantityType<Q, D> type) {
        for (Unit<D> unit : type.units()) {
            double tidy = type.example().in(unit);
            assertThat(unit.numberOf(type.example().si())).isCloseTo(tidy, within(2 * Math.ulp(tidy)));
        }
    }

    @Test
    void factorsRememberedFromADocumentSaySo() {
        assertThat(Arrays.asList(Units.PSI, Units.US_GALLON, Units.CELSIUS))
                .extracting(unit -> unit.source().provenance())
                .containsOnly(Provenance.FROM_MEMORY);
    }

    @Test
    void constantsAreTheConventionalOnes() {
        assertThat(Units.STANDARD_GRAVITY.value()).isEqualTo(9.80665);
        assertThat(Units.CONVENTIONAL_WATER_DENSITY.value()).isEqualTo(1000);
        assertThat(AbsolutePressure.STANDARD_ATMOSPHERE.in(Units.KILOPASCAL)).isEqualTo(101.325);
    }
}
