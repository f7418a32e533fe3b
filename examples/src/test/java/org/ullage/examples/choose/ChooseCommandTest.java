package org.ullage.examples.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ullage.examples.Program;

class ChooseCommandTest {

    private static final String HEAD =
            "id,kind,nominal,max_pressure,max_temperature,empty_mass,diameter,height,connection,price\n";

    @TempDir
    private Path folder;

    private static Program choose(String catalogue, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "choose",
                "loops.csv",
                "--id",
                "Quillbrook Yard, radiators",
                "--at-vessel",
                "60 degC",
                "--catalogue",
                catalogue));
        arguments.addAll(List.of(more));
        return Program.run(arguments.toArray(String[]::new));
    }

    private Program chooseFrom(String lines, String... more) throws IOException {
        Path file = folder.resolve("catalogue.csv");
        Files.writeString(file, HEAD + lines);
        return choose(file.toString(), more);
    }

    /** The loop needs 73.91 L and 30.11 L: one V80 at 139 is cheaper than V50 and V25 at 93 + 48. */
    @Test
    void choosesTheCheapest() {
        Program page = choose("catalogue.csv");
        assertThat(page.err()).isEmpty();
        assertThat(page.status()).isZero();
        assertThat(page.out())
                .contains("1      V80", "runner-up: 1 x V50 + 1 x V25: price 2 more", "next size down", "licensed");
        Map<String, String> row = choose("catalogue.csv", "--csv").row();
        assertThat(row)
                .containsEntry("vessel", "V80")
                .containsEntry("count", "1")
                .containsEntry("total_price", "139")
                .containsEntry("runner_up", "1 x V50 + 1 x V25");
    }

    /** Without the V80's 610 mm: V50 and V25 together hold 75 L. */
    @Test
    void keepsToTheHeightThereIs() {
        List<Map<String, String>> rows =
                choose("catalogue.csv", "--height", "530 mm", "--csv").rows();
        assertThat(rows).extracting(row -> row.get("vessel")).containsExactlyInAnyOrder("V50", "V25");
    }

    @Test
    void wishesAreTakenInTheirOrder() {
        assertThat(choose("catalogue.csv", "--for", "lightest", "--csv").rows().get(0))
                .containsEntry("total_empty", "14.4 kg");
        Program unknown = choose("catalogue.csv", "--for", "prettiest");
        assertThat(unknown.status()).isEqualTo(1);
        assertThat(unknown.err()).contains("known are cheapest, fewest, smallest-footprint, lightest");
    }

    @Test
    void whatStandsInTheWayIsNamedWithBothFigures() {
        Program none = choose("catalogue.csv", "--floor", "0.1 m2");
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("footprint: needs 0.2304 m2, 0.1304 m2 more than there is (1 x V80, 80 L)");
        assertThat(choose("catalogue.csv", "--load", "50 kg").err()).contains("waterlogged mass: needs 89.38 kg");
    }

    @Test
    void theMembraneMustStandTheTemperature() {
        Program hot = Program.run(
                "choose", "loops.csv", "--id", "Quillbrook Yard, radiators", "--catalogue", "catalogue.csv");
        assertThat(hot.status()).isEqualTo(1);
        assertThat(hot.err()).contains("temperature rating");
    }

    @Test
    void badCatalogueLinesAreNamedWithTheirColumn() throws IOException {
        Program bad = chooseFrom("""
                A,diaphragm,80,6 bar,70 degC,14 kg,480 mm,610 mm,R 1,139
                B,balloon,80 L,6 bar,70 degC,14 kg,480 mm,610 mm,R 1,139
                C,diaphragm,80 L,6 bar,70 degC,14 kg,480 mm,610 mm,R 1,139 EUR
                D,diaphragm,-80 L,6 bar,70 degC,14 kg,480 mm,610 mm,R 1,139
                """);
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err())
                .contains("line 2, nominal: ")
                .contains("line 3, kind: \"balloon\" is not a kind of vessel")
                .contains("line 4, price: \"139 EUR\" is not a plain number")
                .contains("line 5: ");
    }

    @Test
    void aLongCellIsRepeatedByItsBeginningOnly() throws IOException {
        Program bad = chooseFrom("A,diaphragm,80 L,6 bar,70 degC,14 kg,480 mm,610 mm,R 1," + "x".repeat(90_000) + "\n");
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err()).contains("x...\" is not a plain number").hasSizeLessThan(500);
    }

    @Test
    void oneIdStandsOnce() throws IOException {
        Program twice = chooseFrom("""
                A,diaphragm,80 L,6 bar,70 degC,14 kg,480 mm,610 mm,R 1,139
                A,diaphragm,50 L,6 bar,70 degC,10 kg,400 mm,500 mm,R 1,99
                """);
        assertThat(twice.status()).isEqualTo(2);
        assertThat(twice.err()).contains("A");
    }
}
