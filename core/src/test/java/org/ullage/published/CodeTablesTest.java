package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;

class CodeTablesTest {

    @Test
    void everyPlainCellIsTheFormulaRoundedDownByLessThanAHalfPercent() {
        for (CodeTankTable table :
                new CodeTankTable[] {CodeTankTable.MICHIGAN_272B, CodeTankTable.IMC_1009_2, CodeTankTable.IRC_M2003_2
                }) {
            assertThat(table.rows()).allSatisfy(row -> {
                CodeTankTable.Cell cell = table.lookUp(row.contents(), VesselKind.PLAIN_STEEL);
                assertThat(cell.isRoundedDown()).isTrue();
                assertThat(cell.formula().dividedBy(cell.printed())).isBetween(1.0, 1.005);
            });
        }
    }

    @ParameterizedTest
    @CsvSource({"100, false", "200, false", "300, false", "400, true", "500, false", "1000, false", "2000, true"})
    void diaphragmCellsOfTheMechanicalCode(double gallons, boolean down) {
        CodeTankTable.Cell cell = CodeTankTable.IMC_1009_2.lookUp(Volume.gallons(gallons), VesselKind.DIAPHRAGM);
        assertThat(cell.isRoundedDown()).isEqualTo(down);
        assertThat(cell.printed().in(Units.US_GALLON)).isCloseTo(cell.formula().in(Units.US_GALLON), within(0.75));
    }

    @ParameterizedTest
    @CsvSource({
        "10, false",
        "20, true",
        "30, false",
        "40, true",
        "50, true",
        "60, false",
        "70, false",
        "80, true",
        "90, false",
        "100, true"
    })
    void fiveDiaphragmCellsOfTheResidentialCodeAreRoundedDown(double gallons, boolean down) {
        CodeTankTable.Cell cell = CodeTankTable.IRC_M2003_2.lookUp(Volume.gallons(gallons), VesselKind.BLADDER);
        assertThat(cell.isRoundedDown()).isEqualTo(down);
        assertThat(cell.toString().contains("rounded down")).isEqualTo(down);
    }

    @Test
    void contentsBetweenTwoRowsTakeTheNextLargerOne() {
        CodeTankTable.Cell cell = CodeTankTable.MICHIGAN_272B.lookUp(Volume.gallons(201), VesselKind.PLAIN_STEEL);
        assertThat(cell.contents().in(Units.US_GALLON)).isCloseTo(300, within(1e-9));
        assertThat(cell.printed().in(Units.US_GALLON)).isCloseTo(45, within(1e-9));
    }

    @Test
    void contentsAboveTheTableAndColumnsThatItHasNotAreRefused() {
        assertThatThrownBy(() -> CodeTankTable.IRC_M2003_2.lookUp(Volume.gallons(101), VesselKind.BLADDER))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("100 gal");
        assertThatThrownBy(() -> CodeTankTable.MICHIGAN_272B.lookUp(Volume.gallons(100), VesselKind.DIAPHRAGM))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("272B");
        assertThatThrownBy(() -> CodeTankTable.IMC_1009_2.lookUp(Volume.gallons(100), VesselKind.OPEN))
                .isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 18 gal, 18",
        "350, 18 gal, 18",
        "351, 21 gal, 21",
        "1000, 35 gal, 35",
        "1401, 2 x 30 gal, 60",
        "2400, 2 x 40 gal, 80",
        "2433, 2 x 40 gal + 1 gal, 81",
        "2730, 2 x 40 gal + 10 gal, 90"
    })
    void gravityTanksByRadiation(double squareFeet, String words, double gallons) {
        GravityTankTable.Tanks tanks = GravityTankTable.tanksFor(squareFeet);
        assertThat(tanks).hasToString(words);
        assertThat(tanks.total().in(Units.US_GALLON)).isCloseTo(gallons, within(1e-9));
    }

    @Test
    void openTankOf1910IsSmallerThanTheClosedGravityTank() {
        assertThat(OpenTankByRadiation.tankFor(1000).in(Units.US_GALLON)).isCloseTo(25, within(1e-9));
        assertThat(OpenTankByRadiation.tankFor(1000))
                .isLessThan(GravityTankTable.tanksFor(1000).total());
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "NaN", "Infinity"})
    void radiationMustBeAboveZero(double squareFeet) {
        assertThatThrownBy(() -> GravityTankTable.tanksFor(squareFeet)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> OpenTankByRadiation.tankFor(squareFeet)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aTableWithoutRowsIsRefused() {
        assertThatThrownBy(() -> new CodeTankTable("empty", List.of(), Source.given()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("number of rows of empty 0");
    }

    @Test
    void cellThatMeetsItsFormulaIsNotRoundedDown() {
        Volume ten = Volume.gallons(10);
        assertThat(new CodeTankTable.Cell(ten, ten, ten, Source.given()).isRoundedDown())
                .isFalse();
    }
}
