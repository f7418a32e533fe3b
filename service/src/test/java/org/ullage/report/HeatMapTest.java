package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.method.Jobs;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.sizing.SizingSweep;
import org.ullage.sizing.SweepAxis;
import org.ullage.vessel.VesselType;
import org.w3c.dom.Element;

class HeatMapTest {

    private static HeatMap.Steps steps(String name, int count, String unit) {
        return new HeatMap.Steps(
                name, IntStream.range(0, count).mapToObj(i -> 10 + i + unit).toList());
    }

    private static HeatMap map(int rows, int columns, String unit) {
        List<List<HeatCell>> cells = IntStream.range(0, rows)
                .mapToObj(row -> IntStream.range(0, columns)
                        .mapToObj(column -> new HeatCell(1.0 * row * columns + column, row + "." + column))
                        .toList())
                .toList();
        return new HeatMap("Map", "number", "none", steps("down", rows, unit), steps("across", columns, unit), cells);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 3", "7, 7", "5, 20", "30, 40"})
    void everythingIsReadableWhateverTheSize(int rows, int columns) {
        LabelChecks.check(map(rows, columns, " degC"));
        LabelChecks.check(map(rows, columns, " of a very long label that has to be wrapped"));
    }

    @Test
    void smallestIsLightestAndLargestDarkest() {
        List<String> faces = Drawn.elements(Drawn.parse(map(2, 2, " m").svg()), "rect").stream()
                .map(cell -> cell.getAttribute("fill"))
                .toList();
        // the first two are the samples of the legend
        assertThat(faces).hasSize(6);
        assertThat(faces.get(2)).isEqualTo(faces.get(0)).isEqualTo(HeatColour.of(0));
        assertThat(faces.get(5)).isEqualTo(faces.get(1)).isEqualTo(HeatColour.of(1));
        assertThat(faces.subList(2, 6)).doesNotHaveDuplicates();
    }

    @Test
    void inkIsReadableOnEveryFace() {
        for (double share = 0; share <= 1; share += 0.01) {
            assertThat(contrast(HeatColour.of(share), HeatColour.ink(share)))
                    .as("contrast at %s, WCAG 2.1, 1.4.3 asks for 4.5 and for 3 of large letters", share)
                    .isGreaterThan(4.4);
        }
    }

    /** Relative luminance and contrast as WCAG 2.1 defines them. */
    private static double contrast(String face, String ink) {
        double one = luminance(face);
        double other = luminance(ink);
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test
    void numbersStandInTheCellsWhereTheyFit() {
        assertThat(texts(map(2, 2, " m"))).contains("0.0", "1.1");
        assertThat(texts(map(2, 40, " m"))).doesNotContain("1.20");
    }

    private static List<String> texts(HeatMap map) {
        return Drawn.elements(Drawn.parse(map.svg()), "text").stream()
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void aSweepShowsVolumesAndRefusals() {
        SizingSweep sweep = SizingSweep.of(
                Methods.ASHRAE,
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)),
                SweepAxis.hotTemperature(List.of(Temperature.celsius(60), Temperature.celsius(80))),
                SweepAxis.staticHead(List.of(Length.metres(5), Length.metres(10), Length.metres(40))));
        HeatMap map = SweepChart.of(sweep, UnitSystem.SI);
        LabelChecks.check(map);
        assertThat(map.description())
                .startsWith("required volume, L, from ")
                .contains("down: hot temperature, 60 degC to 80 degC; across: static head, 5 m to 40 m.")
                .endsWith("Cells without a number: 2, refused by the method.");
        assertThat(texts(map)).contains("refused by the method", "60 degC", "40 m");
        assertThat(SweepChart.of(sweep, UnitSystem.IP).valueName()).isEqualTo("required volume, gal");
    }

    @Test
    void withoutNumbersItSaysSo() {
        HeatMap.Steps one = new HeatMap.Steps("x", List.of("1"));
        HeatMap map = new HeatMap("Map", "number", "none", one, one, List.of(List.of(new HeatCell(null, ""))));
        assertThat(map.description()).contains("no data");
        LabelChecks.check(map);
    }

    @Test
    void aGridWithHolesIsRefused() {
        HeatMap.Steps two = new HeatMap.Steps("x", List.of("1", "2"));
        HeatCell cell = new HeatCell(1.0, "1");
        assertThatThrownBy(() -> new HeatMap("Map", "n", "g", two, two, List.of(List.of(cell, cell))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("rows of a heat map 1");
        assertThatThrownBy(() -> new HeatMap("Map", "n", "g", two, two, List.of(List.of(cell), List.of(cell))))
                .hasMessageContaining("cells in a row");
        assertThatThrownBy(() -> new HeatCell(Double.NaN, "")).hasMessageContaining("finite");
    }
}
