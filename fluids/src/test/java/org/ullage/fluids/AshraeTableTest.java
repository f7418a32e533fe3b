package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Surfaces made afresh from the tables; {@link GlycolData} keeps the ones it has made. */
class AshraeTableTest {

    private static DensitySurface surface(String key, List<AshraeTable.Correction> corrections) {
        return new AshraeTable(
                        NumberTable.read("ashrae-density-" + key + ".tsv"),
                        NumberTable.read("ashrae-density-hot-" + key + ".tsv"),
                        corrections)
                .surface();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void curvesMeetEveryCellUpToAHundredDegrees(String key) {
        DensitySurface surface = surface(key, List.of());
        NumberTable printed = NumberTable.read("expected-ashrae-density-" + key + ".tsv");
        for (int percent = 10; percent <= 60; percent += 10) {
            PiecewiseCubic column = surface.at(percent);
            for (int row = 0; row < printed.size(); row++) {
                double celsius = printed.number(row, "t_degC");
                double density = printed.number(row, "v" + percent);
                if (Double.isNaN(density)) {
                    assertThat(column.first()).isGreaterThan(celsius);
                } else {
                    assertThat(column.value(celsius)).isCloseTo(density, within(1e-9));
                }
            }
        }
    }

    /** Above 100 degC the cells have four digits; within their rounding the curve goes on as smoothly as below. */
    @ParameterizedTest
    @ValueSource(strings = {"ethylene", "propylene"})
    void hotRowsRoundToTheirCellsWithoutAKink(String key) {
        DensitySurface surface =
                surface(key, GlycolData.of(GlycolCases.glycol(key)).corrections());
        NumberTable printed = NumberTable.read("ashrae-density-hot-" + key + ".tsv");
        for (int percent = 10; percent <= 60; percent += 10) {
            PiecewiseCubic column = surface.at(percent);
            for (int row = 0; row < printed.size(); row++) {
                double celsius = printed.number(row, "t_degC");
                double density = printed.number(row, "v" + percent);
                assertThat(column.value(celsius)).isCloseTo(density, within((density >= 1000 ? 0.5 : 0.05) + 1e-9));
            }
            assertThat(column.last()).isEqualTo(125);
            for (double celsius = 90; celsius <= 120; celsius += 2.5) {
                double second = column.value(celsius - 5) - 2 * column.value(celsius) + column.value(celsius + 5);
                assertThat(second).as("%s %% at %s", percent, celsius).isBetween(-0.17, -0.08);
            }
        }
    }

    @Test
    void correctionChangesItsCellAndNoOther() {
        var correction = new AshraeTable.Correction(30, 10, 1009.62, 1009.92);
        DensitySurface asPrinted = surface("ethylene", List.of());
        DensitySurface corrected = surface("ethylene", List.of(correction));
        assertThat(corrected.at(10).value(30)).isEqualTo(1009.92);
        for (int celsius = 0; celsius <= 100; celsius += 5) {
            if (celsius != 30) {
                assertThat(corrected.at(10).value(celsius))
                        .isEqualTo(asPrinted.at(10).value(celsius));
            }
            assertThat(corrected.at(20).value(celsius))
                    .isEqualTo(asPrinted.at(20).value(celsius));
        }
        var ofAnotherPrint = new AshraeTable.Correction(30, 10, 1009.6, 1009.92);
        assertThat(surface("ethylene", List.of(ofAnotherPrint)).at(10).value(30))
                .isEqualTo(1009.62);
    }
}
