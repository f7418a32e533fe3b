package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.provenance.CitedTable;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Old cast iron radiators by section, by rating and by output. */
class RadiatorTest {

    static Stream<Map<String, String>> sections() {
        return CitedTable.read(Loop.class, "expected-radiator-edr.tsv").rows().stream();
    }

    static Stream<Map<String, String>> emissions() {
        return CitedTable.read(Loop.class, "expected-radiator-emission.tsv").rows().stream();
    }

    private static Length inches(double number) {
        return Length.of(number, Units.INCH);
    }

    @ParameterizedTest
    @MethodSource("sections")
    void everyCitedSection(Map<String, String> row) {
        RadiatorSection section = RadiatorSection.of(row.get("type"), inches(Double.parseDouble(row.get("height_in"))));
        assertThat(section.squareFeetEdr()).isEqualTo(Double.parseDouble(row.get("edr")));
        assertThat(RadiatorSection.all()).contains(section);
        assertThat(section.source().provenance()).isEqualTo(Provenance.PUBLISHED);
        assertThat(section.source().reading().contains("doubtful"))
                .isEqualTo(row.get("mark").contains("doubtful"));
    }

    @Test
    void everySectionOfOneTypeIsRatedHigherWhenItIsTaller() {
        RadiatorSection.all()
                .forEach(section -> RadiatorSection.all().stream()
                        .filter(other -> other.type().equals(section.type()))
                        .filter(other -> other.height().compareTo(section.height()) > 0)
                        .forEach(taller -> assertThat(taller.squareFeetEdr()).isGreaterThan(section.squareFeetEdr())));
    }

    @Test
    void contentsBySection() {
        // ten sections of 6.5 ft2 EDR at 0.188 gal/ft2
        ContentsItem column = RadiatorSection.of("4 column", inches(32)).item(10);
        assertThat(column.volume().typical().in(Units.US_GALLON)).isCloseTo(12.22, within(1e-9));
        assertThat(column.name()).isEqualTo("4 column 32 in radiator section");
        assertThat(column.sources()).hasSize(2);
        // 12 sections of 4 ft2 EDR at 0.103 gal/ft2
        ContentsItem tube = RadiatorSection.of("6 tube", inches(26)).item(12);
        assertThat(tube.volume().typical().in(Units.US_GALLON)).isCloseTo(4.944, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("emissions")
    void everyCitedEmission(Map<String, String> row) {
        Temperature water = Temperature.fahrenheit(Double.parseDouble(row.get("water_F")));
        assertThat(RadiatorEmission.ofOneSquareFoot(water).in(Units.BTU_PER_HOUR))
                .isCloseTo(Double.parseDouble(row.get("btu_per_hour")), within(1e-6));
        assertThat(RadiatorEmission.source(water).provenance()).isEqualTo(Provenance.PUBLISHED);
    }

    /** The rows lie on one straight line, 2 Btu/h per degF through 170 Btu/h at 180 degF. */
    @ParameterizedTest
    @ValueSource(doubles = {110, 119.5, 145, 152, 163.3, 178, 192.5, 215})
    void betweenTheRows(double fahrenheit) {
        assertThat(RadiatorEmission.ofOneSquareFoot(Temperature.fahrenheit(fahrenheit))
                        .in(Units.BTU_PER_HOUR))
                .isCloseTo(170 + 2 * (fahrenheit - 180), within(1e-6));
    }

    @Test
    void contentsByOutput() {
        // 17,000 Btu/h at 170 Btu/h per ft2 is 100 ft2 EDR
        Power output = Power.btuPerHour(17_000);
        Temperature water = Temperature.fahrenheit(180);
        assertThat(RadiatorEmission.squareFeetEdr(output, water)).isCloseTo(100, within(1e-9));
        assertThat(Radiator.LARGE_TUBE_RADIATOR
                        .item(output, water)
                        .volume()
                        .typical()
                        .in(Units.US_GALLON))
                .isCloseTo(10.3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"109.9", "215.1", "32"})
    void outsideTheTable(double fahrenheit) {
        assertThatThrownBy(() -> RadiatorEmission.ofOneSquareFoot(Temperature.fahrenheit(fahrenheit)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("must be from 110 degF to 215 degF; rate the radiators by their size");
    }

    @Test
    void whatCannotBe() {
        assertThatThrownBy(() -> RadiatorSection.of("4 column", inches(33)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(
                        "radiator section \"4 column\" of 33 in is not allowed: it must be one of 1 column 20 in, ")
                .hasMessageContaining("4 column 32 in, 4 column 38 in");
        assertThatThrownBy(() -> Radiator.COLUMN_RADIATOR.item(0)).hasMessageStartingWith("radiation 0.0 ft2 EDR");
        assertThatThrownBy(() -> RadiatorEmission.squareFeetEdr(Power.kilowatts(0), Temperature.fahrenheit(180)))
                .hasMessageStartingWith("output 0 kW (0 Btu/h)");
    }
}
