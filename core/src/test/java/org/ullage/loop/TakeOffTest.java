package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** Contents counted up from pipes and items, and how the list reads. */
class TakeOffTest {

    private static final TakeOff HOUSE = TakeOff.start()
            .pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(120))
            .pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(30))
            .pipe(PipeStandard.ASME_B36_10_SCH_40, "DN 50", Length.metres(12))
            .item("boiler", Volume.litres(18), 1)
            .item("radiator", Volume.litres(5.7), 3);

    private static Length inches(double number) {
        return Length.of(number, Units.INCH);
    }

    @Test
    void addsUp() {
        Contents contents = HOUSE.contents();
        // 150 x 0.31225 + 12 x 2.1649 + 18 + 17.1 L
        assertThat(contents.typical().in(Units.LITRE)).isCloseTo(107.916, within(0.001));
        assertThat(contents.low()).isEqualTo(contents.high()).isEqualTo(contents.forSizing());
        assertThat(contents.basis()).isEqualTo(ContentsBasis.TAKE_OFF);
        assertThat(contents.pipeMaterials()).containsExactly(PipeMaterial.COPPER, PipeMaterial.STEEL);
        assertThat(contents.pipeLengths())
                .containsOnlyKeys("ASTM B88 type L 3/4", "ASME B36.10 Sch 40 2")
                .containsEntry("ASTM B88 type L 3/4", Length.metres(150));
    }

    /** A school exercise: 680 m of 18 x 2, 2 x 7 m of 21.3 mm bore, three radiators of 5.7 L make 126.8 L. */
    @Test
    void aSchoolExercise() {
        Contents contents = TakeOff.start()
                .pipe(PipeStandard.METRIC_PLASTIC, "18 x 2", Length.metres(680))
                .pipe(Pipe.ofBore("riser", Length.millimetres(21.3), PipeMaterial.STEEL), Length.metres(14))
                .item("radiator", Volume.litres(5.7), 3)
                .contents();
        assertThat(contents.typical().in(Units.LITRE)).isCloseTo(126.8, within(0.05));
    }

    @Test
    void readsAsAlignedText() {
        assertThat(HOUSE.contents().text(UnitSystem.SI)).startsWith("""
                Contents, taken off: 107.9 L
                  item                  amount        each  contents  source
                  ASTM B88 type L 3/4    120 m  0.3122 L/m   37.47 L  [1]
                  ASTM B88 type L 3/4     30 m  0.3122 L/m   9.367 L  [1]
                  ASME B36.10 Sch 40 2    12 m   2.165 L/m   25.98 L  [2]
                  boiler                     1        18 L      18 L  [3]
                  radiator                   3       5.7 L    17.1 L  [3]
                  total                                      107.9 L
                [1] [PUBLISHED] ASTM B88-22, Seamless Copper Water Tube, table of dimensions (second-hand: \
                """);
        assertThat(HOUSE.contents().text(UnitSystem.SI)).endsWith("\n[3] [GIVEN] the caller's value\n");
    }

    @Test
    void readsAsTable() {
        List<List<String>> table = HOUSE.contents().table(UnitSystem.IP);
        assertThat(table).hasSize(7).allSatisfy(row -> assertThat(row).hasSize(5));
        assertThat(table.get(1))
                .containsExactly("ASTM B88 type L 3/4", "393.701 ft", "0.02514 gal/ft", "9.898 gal", "[1]");
        assertThat(table.get(5)).containsExactly("radiator", "3", "1.506 gal", "4.517 gal", "[3]");
        assertThat(table.get(6)).containsExactly("total", "", "", "28.51 gal", "");
    }

    @Test
    void aRangeOfAnItemMakesThreeColumns() {
        Contents contents =
                HOUSE.add(PieceRule.RESIDENTIAL_CAST_IRON_BOILER.item(1)).contents();
        assertThat(contents.table(UnitSystem.IP).get(0))
                .containsExactly("item", "amount", "each", "low", "typical", "high", "source");
        assertThat(contents.table(UnitSystem.IP).get(6))
                .containsExactly(
                        "residential cast iron boiler", "1", "22.5 gal", "15 gal", "22.5 gal", "30 gal", "[4]");
        assertThat(contents.high().minus(contents.low()).in(Units.US_GALLON)).isCloseTo(15, within(1e-9));
        assertThat(contents.forSizing()).isEqualTo(contents.high());
        assertThat(contents.text(UnitSystem.IP))
                .startsWith("Contents, taken off: 43.51 gal to 58.51 gal, typically 51.01 gal\n");
    }

    @Test
    void linesCanHaveNamesOfTheirOwn() {
        Pipe pipe = PipeStandard.EN_1057.size("28 x 1.5").pipe();
        Contents contents =
                TakeOff.start().pipe("riser", pipe, Length.metres(10)).contents();
        assertThat(contents.items().get(0).name()).isEqualTo("riser");
        assertThat(contents.pipeLengths()).containsOnlyKeys("EN 1057 28 x 1.5");
    }

    @Test
    void heatedFloor() {
        Pipe pipe = PipeStandard.METRIC_PLASTIC.size("16 x 2").pipe();
        Contents contents = TakeOff.start()
                .floor(pipe, Length.millimetres(150), Area.squareMetres(60))
                .contents();
        assertThat(contents.pipeLengths().get(pipe.name())).isEqualTo(Length.metres(400));
        assertThat(contents.typical().in(Units.LITRE)).isCloseTo(400 * Math.PI / 4 * 0.12 * 0.12 * 10, within(1e-9));
        assertThatThrownBy(() -> TakeOff.start().floor(pipe, inches(0), Area.squareFeet(500)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("pipe spacing 0 mm (0 in) is not allowed: it must be above zero");
    }

    @Test
    void areasInFeetAndMetres() {
        assertThat(Area.squareFeet(1).si()).isCloseTo(0.09290304, within(1e-15));
        assertThat(Area.squareFeet(1200).in(Units.SQUARE_FOOT)).isCloseTo(1200, within(1e-9));
        assertThat(Area.squareMetres(120).text(UnitSystem.SI)).isEqualTo("120 m2");
        assertThat(Area.squareFeet(1200).text(UnitSystem.IP)).isEqualTo("1200 ft2");
        assertThatThrownBy(() -> Area.squareMetres(Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Area.squareMetres(0)).hasMessageStartingWith("area 0.0 m2 is not allowed");
    }

    @Test
    void nothingIsChangedByAddingToIt() {
        Volume before = HOUSE.contents().typical();
        HOUSE.item("buffer", Volume.litres(500), 1);
        assertThat(HOUSE.contents().typical()).isEqualTo(before);
    }

    @Test
    void whatCannotBeAdded() {
        assertThatThrownBy(() -> TakeOff.start().contents())
                .isInstanceOf(MissingInputException.class)
                .hasMessage(
                        "a pipe or an item is missing: a list of contents needs it; add the boiler, the emitters and the"
                                + " pipes");
        assertThatThrownBy(() -> HOUSE.item("boiler", Volume.litres(0), 1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(
                        "contents of boiler 0 L (0 gal) is not allowed: it must be above zero; take the water"
                                + " content from the plate");
        assertThatThrownBy(() -> HOUSE.item("boiler", Volume.litres(18), 0))
                .hasMessage(
                        "count 0 is not allowed: it must be 1 or more; leave the line out if there is no such item");
        assertThatThrownBy(() -> HOUSE.pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(-1)))
                .hasMessageStartingWith("length of ASTM B88 type L 3/4 -1000 mm");
        assertThatThrownBy(() -> TakeOff.start()
                        .pipe(PipeStandard.ASTM_B88_L, "3/4", Length.metres(0))
                        .contents())
                .hasMessageStartingWith("lowest contents 0 L (0 gal) is not allowed: it must be above zero");
    }

    @Test
    void everySourceIsNamedOnce() {
        List<Source> sources = HOUSE.contents().sources();
        assertThat(sources).hasSize(3).doesNotHaveDuplicates().contains(Source.given());
    }
}
