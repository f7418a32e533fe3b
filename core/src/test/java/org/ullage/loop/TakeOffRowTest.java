package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnreadableQuantityException;
import org.ullage.quantity.Volume;

/** Lines of a written take-off. */
class TakeOffRowTest {

    private static ContentsItem read(TakeOffRow row) {
        return row.addTo(TakeOff.start()).contents().items().get(0);
    }

    /** Cells in the order of the columns. */
    private static TakeOffRow row(String... cells) {
        Map<String, String> byColumn = new HashMap<>();
        for (int i = 0; i < cells.length; i++) {
            byColumn.put(TakeOffRow.COLUMNS.get(i), cells[i]);
        }
        return new TakeOffRow(byColumn);
    }

    private static TakeOffRow pipe(String standard, String size, String length) {
        return row("", standard, size, length, "", "");
    }

    private static TakeOffRow item(String name, String count, String volume) {
        return row(name, "", "", "", count, volume);
    }

    @Test
    void aPipe() {
        ContentsItem item = read(pipe("ASTM B88 L", "3/4", "100 ft"));
        assertThat(item.name()).isEqualTo("ASTM B88 type L 3/4");
        assertThat(item.volume().typical())
                .isEqualTo(PipeStandard.ASTM_B88_L.size("3/4").contents(Length.feet(100)));
    }

    @Test
    void aPipeWithANameAndEqualLengths() {
        ContentsItem item = read(row(" risers ", "EN 1057", "28 x 1.5", "12 m", "4", ""));
        assertThat(item.name()).isEqualTo("risers, EN 1057 28 x 1.5");
        assertThat(item.amount().metric()).isEqualTo(48);
    }

    @Test
    void anItem() {
        ContentsItem item = read(item("radiator", " 3 ", "5.7 L"));
        assertThat(item.name()).isEqualTo("radiator");
        assertThat(item.volume())
                .isEqualTo(VolumeRange.exactly(Volume.litres(5.7).times(3)));
        assertThat(read(item("boiler", "", "18 L")).amount().metric()).isEqualTo(1);
    }

    @Test
    void anItemKnownAsARange() {
        assertThat(read(item("boiler", "", "15 gal to 30 gal")).volume())
                .isEqualTo(VolumeRange.between(Volume.gallons(15), Volume.gallons(30)));
    }

    @Test
    void columnsCanBeLeftOutButNotMadeUp() {
        assertThat(read(new TakeOffRow(Map.of("item", "boiler", "volume", "18 L")))
                        .volume()
                        .typical())
                .isEqualTo(Volume.litres(18));
        assertThatThrownBy(() -> new TakeOffRow(Map.of("weight", "18 kg")))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "column \"weight\" is not allowed: it must be one of item, standard, size, length, count, volume;"
                                + " rename it or leave it out");
    }

    @Test
    void whatIsMissingIsNamed() {
        missing(item("", "2", "5 L"), "item is missing: a line without a pipe standard needs it");
        missing(item("boiler", "1", ""), "volume is missing: item \"boiler\" needs it");
        missing(pipe("EN 1057", "", "5 m"), "size is missing: a pipe needs it");
        missing(pipe("EN 1057", "22 x 1", ""), "length is missing: a pipe needs it");
    }

    private static void missing(TakeOffRow row, String message) {
        assertThatThrownBy(() -> read(row))
                .isInstanceOf(MissingInputException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void whatDoesNotBelongIsRefused() {
        refused(row("boiler", "", "22 x 1", "", "", "5 L"), "size \"22 x 1\" is not allowed: it must be blank");
        refused(row("boiler", "", "", "5 m", "", "5 L"), "length \"5 m\" is not allowed: it must be blank");
        refused(row("", "EN 1057", "22 x 1", "5 m", "", "5 L"), "volume \"5 L\" is not allowed: it must be blank");
        refused(pipe("EN 1058", "22 x 1", "5 m"), "pipe standard \"EN 1058\" is not allowed");
        refused(item("boiler", "", "30 gal to 15 gal"), "typical volume");
        refused(item("boiler", "", "1 L to 2 L to 3 L"), "volume \"1 L to 2 L to 3 L\" is not allowed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1.5", "two", "1 pc", "99999999999", "1e3"})
    void noWholeNumber(String count) {
        refused(
                item("boiler", count, "5 L"),
                "count \"" + count + "\" is not allowed: it must be a whole number from 1");
    }

    private static void refused(TakeOffRow row, String message) {
        assertThatThrownBy(() -> read(row))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource({"5", "5 psi", "about 5 L", "5 L to", "to 5 L"})
    void noVolume(String volume) {
        assertThatThrownBy(() -> read(item("boiler", "", volume))).isInstanceOf(UnreadableQuantityException.class);
    }
}
