package org.ullage.examples.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;

class SupportCommandTest {

    private static Program check(String file, String... options) {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "support";
        arguments[1] = "-";
        System.arraycopy(options, 0, arguments, 2, options.length);
        return Program.run(new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    /** 18 L x 0.9982 kg/L + 3.9 kg = 21.87 kg; full, twice: 43.74 kg (UMC 1004.1). */
    @Test
    void weighsAndChecks() {
        List<Map<String, String>> rows =
                Program.run("support", "supports.csv", "--csv").rows();
        assertThat(rows.get(0))
                .containsEntry("waterlogged", "21.87 kg")
                .containsEntry("twice_filled", "43.74 kg")
                .containsEntry("verdict", "refused");
        assertThat(rows.get(1)).containsEntry("waterlogged", "48.59 lb").containsEntry("verdict", "passes");
        assertThat(rows).extracting(row -> row.get("check")).contains("pull and shear together");
        assertThat(rows).allSatisfy(row -> assertThat(row.get("error")).isEmpty());
    }

    @Test
    void readsLikeAPage() {
        Program page = Program.run("support", "supports.csv");
        assertThat(page.status()).isZero();
        assertThat(page.out())
                .contains("hung from a copper stub\n  18 L vessel: empty 3.9 kg", "REFUSED", "drain it", "licensed")
                .doesNotContain("null");
        assertThat(Program.run("support", "supports.csv", "--workings").out()).contains("  1  ");
    }

    @Test
    void weighsAVesselOfWhichNothingElseIsKnown() {
        Program weight = check("id,nominal,empty_mass,fluid_density\na,100 L,15 kg,1050 kg/m3\n", "--csv");
        assertThat(weight.row()).containsEntry("waterlogged", "120 kg").containsEntry("check", "");
    }

    @Test
    void anEarthquakePushesOnTheStub() {
        String head = "id,nominal,empty_mass,stub_standard,stub_size,stub_arm,s_ds,i_p,z_over_h\n";
        String still = check(head + "a,18 L,4 kg,ASME B36.10 schedule 40,1,150 mm,,,\n", "--csv")
                .row()
                .get("actual");
        Program shaken = check(head + "a,18 L,4 kg,ASME B36.10 schedule 40,1,150 mm,1.0,1.0,0.5\n");
        assertThat(shaken.out()).contains("0.32");
        assertThat(shaken.out()).doesNotContain(still);
    }

    @Test
    void badLinesAreNamedAndTheOthersAnswered() {
        Program some = check("""
                id,nominal,empty_mass,stub_standard,stub_size,stub_arm
                one,18,4 kg,,,
                two,18 L,,,,
                three,18 L,4 kg,no such pipe,1,1 m
                four,18 L,4 kg,,,
                five,18 L
                """, "--csv");
        assertThat(some.status()).isEqualTo(1);
        assertThat(some.err()).contains("4 of 5 lines could not be read");
        List<Map<String, String>> rows = some.rows();
        assertThat(rows.get(0).get("error")).contains("line 2, nominal: ").contains("the unit is missing");
        assertThat(rows.get(1).get("error")).contains("empty_mass or rating");
        assertThat(rows.get(2).get("error")).contains("line 4, stub_standard: ");
        assertThat(rows.get(3).get("waterlogged")).isEqualTo("21.97 kg");
        assertThat(rows.get(4).get("error")).contains("another number of cells");
    }

    @Test
    void anUnknownColumnStopsIt() {
        Program none = check("id,volume\na,18 L\n");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).contains("unknown column \"volume\"");
    }
}
