package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.examples.Program;

/** What the answer to a good line looks like. */
class SizeContractTest {

    private static final String GOOD = "a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,1.2 bar,2.7 bar,,,,";

    @Test
    void answersUnderTheColumnsOfTheContract() {
        Program run = Program.sizeLines(GOOD);

        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("id,required_volume,expansion_volume,acceptance_volume,precharge,cold_pressure,"
                        + "final_pressure,warnings,error\r\n");
        assertThat(run.row())
                .containsEntry("id", "a")
                .containsEntry("precharge", "1.2 bar")
                .containsEntry("cold_pressure", "1.2 bar")
                .containsEntry("final_pressure", "2.7 bar")
                .containsEntry("warnings", "")
                .containsEntry("error", "");
    }

    @Test
    void keepsTheOrderOfTheLines() {
        Program run = Program.sizeLines(
                GOOD.replaceFirst("a", "z"), GOOD.replaceFirst("a", "bad").replace("1000 L", "-1 L"), GOOD, GOOD);

        assertThat(run.rows()).extracting(row -> row.get("id")).containsExactly("z", "bad", "a", "a");
        assertThat(run.status()).isEqualTo(1);
    }

    @Test
    void countsTheReserveIntoTheAcceptanceOnly() {
        Map<String, String> row = Program.sizeLines("a,en-12828,bladder,water,1000 L,,80 degC,,,,10 m,3 bar,,")
                .row();

        assertThat(row).containsEntry("expansion_volume", "28.06 L").containsEntry("acceptance_volume", "33.06 L");
    }

    @ParameterizedTest
    @CsvSource({"1000 L,L", "1 m3,m3", "264.172052358 gal,gal", "35.3146667215 ft3,ft3", "1000 litres,L", "1000l,L"})
    void answersVolumesInTheUnitOfTheContents(String contents, String unit) {
        Map<String, String> row =
                Program.sizeLines(GOOD.replace("1000 L", contents)).row();

        assertThat(List.of("required_volume", "expansion_volume", "acceptance_volume"))
                .allSatisfy(column -> assertThat(row.get(column)).matches("[0-9.]+ " + unit));
    }

    @Test
    void printsSixSignificantDigits() {
        assertThat(Program.sizeLines(GOOD).row().get("required_volume")).matches("[1-9][0-9]\\.[0-9]{4} L");
    }

    @ParameterizedTest
    @CsvSource({
        // cold, final, relief, precharge -> unit
        "'10 psi,2.7 bar,,',psi",
        "'100 kPa,2.7 bar,,',kPa",
        "'10 mH2O,2.7 bar,,',mH2O",
        "'10 m H2O,2.7 bar,,',mH2O",
        "'2000 mbar abs,2.7 bar,,',mbar",
        "'14 psig,2.7 bar,,',psi",
        "'0 psi,2.7 bar,,',psi",
    })
    void answersPressuresInTheUnitOfTheFirstOne(String pressures, String unit) {
        String[] given = pressures.split(",", -1);
        Map<String, String> row = Program.sizeLines("a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel," + given[0]
                        + "," + given[1] + ",," + given[2] + "," + given[3] + ",")
                .row();

        assertThat(row).containsEntry("error", "");
        assertThat(List.of("precharge", "cold_pressure", "final_pressure"))
                .allSatisfy(column -> assertThat(row.get(column)).matches("[0-9.]+ " + unit));
    }

    @ParameterizedTest
    @CsvSource({"'9 m,40 psi,100 kPa',psi", "'9 m,300 kPa,1 bar',kPa"})
    void looksForTheUnitInTheReliefSettingBeforeThePrecharge(String given, String unit) {
        String[] cells = given.split(",", -1);
        Map<String, String> row = Program.sizeLines("a,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,,," + cells[0]
                        + "," + cells[1] + "," + cells[2] + ",")
                .row();

        assertThat(row.get("final_pressure")).endsWith(" " + unit);
    }

    @Test
    void leavesThePressuresOfAnOpenTankBlank() {
        Program run = Program.sizeLines("a,ashrae,open,water,1000 L,10 degC,80 degC,none,,,,,,");

        assertThat(run.status()).isZero();
        assertThat(run.row())
                .containsEntry("precharge", "")
                .containsEntry("cold_pressure", "")
                .containsEntry("final_pressure", "");
        assertThat(run.row().get("required_volume")).endsWith(" L");
    }

    @Test
    void joinsSeveralWarnings() {
        Map<String, String> row = Program.sizeLines("a,en-12828,diaphragm,water,1000 L,,80 degC,steel,,,10 m,3 bar,,")
                .row();

        assertThat(row.get("warnings").split(" \\| ", -1))
                .hasSize(3)
                .anySatisfy(text -> assertThat(text).contains("acceptance limit"))
                .anySatisfy(text -> assertThat(text).contains("pipe"));
    }

    @Test
    void takesAGivenPressureAsItIs() {
        Map<String, String> margins = Program.sizeLines("a,ashrae,bladder,water,1000 L,10 degC,80 degC,,,,0 m,3 bar,,")
                .row();

        assertThat(Program.sizeLines(GOOD).row()).containsEntry("final_pressure", "2.7 bar");
        assertThat(margins).containsEntry("cold_pressure", "0.27579 bar").containsEntry("final_pressure", "2.7 bar");
    }

    @Test
    void takesAPrechargeThatDiffersFromTheRule() {
        Map<String, String> row =
                Program.sizeLines(GOOD.replace("bar,,,,", "bar,,,0.8 bar,")).row();

        assertThat(row).containsEntry("precharge", "0.8 bar").containsEntry("cold_pressure", "1.2 bar");
    }

    @Test
    void aMethodIgnoresATemperatureThatItDoesNotNeed() {
        assertThat(Program.sizeLines("a,asme-iv,plain-steel,water,100 gal,,195 degF,,12 psi,30 psi,,,,")
                        .status())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"steel", "copper", "none", "STEEL"})
    void knowsThePipes(String pipe) {
        assertThat(Program.sizeLines(GOOD.replace("steel", pipe)).row()).containsEntry("error", "");
    }

    @Test
    void noPipeCreditIsNotTheSameAsAPipeThatIsNotStated() {
        Map<String, String> none =
                Program.sizeLines(GOOD.replace("steel", "none")).row();
        Map<String, String> blank = Program.sizeLines(GOOD.replace("steel", "")).row();

        assertThat(none).containsEntry("warnings", "").containsEntry("expansion_volume", blank.get("expansion_volume"));
        assertThat(blank.get("warnings")).contains("pipe material was not given");
    }

    @Test
    void takesColumnsInAnyOrder() {
        String ordered = Program.HEADER + "\n" + GOOD;
        List<List<String>> lines = Arrays.stream(ordered.split("\n", -1))
                .map(line -> Arrays.asList(line.split(",", -1)))
                .toList();
        lines.forEach(Collections::reverse);
        String reversed = String.join(",", lines.get(0)) + "\n" + String.join(",", lines.get(1));

        assertThat(Program.size(reversed).out()).isEqualTo(Program.size(ordered).out());
    }

    @Test
    void needsTheRequiredColumnsOnly() {
        Program run =
                Program.size("contents,fluid,vessel,method,id,cold,hot\n1000 L,water,open,ashrae,a,10 degC,80 degC");

        assertThat(run.status()).isZero();
        assertThat(run.row()).containsEntry("error", "");
    }

    @Test
    void answersAHeaderAloneWithAHeaderAlone() {
        Program run = Program.size(Program.HEADER);

        assertThat(run.status()).isZero();
        assertThat(run.out()).hasLineCount(1);
    }
}
