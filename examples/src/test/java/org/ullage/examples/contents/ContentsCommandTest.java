package org.ullage.examples.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.examples.Program;

class ContentsCommandTest {

    private static final String HEADER = "item,standard,size,length,count,volume\n";

    private static Program contents(String file, String... options) {
        return contents(file.getBytes(StandardCharsets.UTF_8), options);
    }

    private static Program contents(byte[] file, String... options) {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "contents";
        System.arraycopy(options, 0, arguments, 1, options.length);
        arguments[options.length + 1] = "-";
        return Program.run(new ByteArrayInputStream(file), arguments);
    }

    @Test
    void theSampleIsReadWhole() {
        Program sample = Program.run("contents", "takeoff.csv");
        assertThat(sample.status()).isZero();
        assertThat(sample.err()).isEmpty();
        List<Map<String, String>> rows = sample.rows();
        assertThat(rows).hasSize(9).allSatisfy(row -> assertThat(row).containsEntry("error", ""));
        assertThat(rows.get(0))
                .containsEntry("item", "mains, cellar, EN 10255 medium DN 40")
                .containsEntry("amount", "38 m");
        assertThat(rows.get(8).get("item")).isEqualTo("total");
    }

    @Test
    void eachLineAndTheTotal() {
        Program program =
                contents(HEADER + ",ASTM B88 type L,3/4,100 ft,,\nboiler,,,,,10 gal\nradiator,,,,4,1 gal to 2 gal\n");
        assertThat(program.status()).isZero();
        List<Map<String, String>> rows = program.rows();
        assertThat(rows.get(0))
                .containsEntry("item", "ASTM B88 type L 3/4")
                .containsEntry("amount", "100 ft")
                .containsEntry("each", "0.0251419 gal/ft")
                .containsEntry("typical", "2.51419 gal");
        assertThat(rows.get(0).get("source")).startsWith("[PUBLISHED] ASTM B88");
        assertThat(rows.get(2))
                .containsEntry("low", "4 gal")
                .containsEntry("typical", "6 gal")
                .containsEntry("high", "8 gal");
        assertThat(rows.get(3))
                .containsEntry("item", "total")
                .containsEntry("low", "16.5142 gal")
                .containsEntry("typical", "18.5142 gal")
                .containsEntry("high", "20.5142 gal");
    }

    @Test
    void columnsInAnyOrderAndLeftOut() {
        Program program = contents("\uFEFFlength,size,standard\n10 m,22 x 1,EN 1057\n\n");
        assertThat(program.rows().get(1)).containsEntry("typical", "3.14159 L");
    }

    @ParameterizedTest
    @CsvSource({"IP, 2.64172 gal", "SI, 10 L"})
    void inTheSystemAskedFor(String units, String total) {
        Program program = contents(HEADER + "boiler,,,,,10 L\n", "--units", units);
        assertThat(program.rows().get(1)).containsEntry("typical", total);
    }

    @Test
    void asText() {
        Program program = contents(HEADER + "boiler,,,,2,10 L\n", "--text");
        assertThat(program.out()).isEqualTo("""
                Contents, taken off: 20 L
                  item    amount  each  contents  source
                  boiler       2  10 L      20 L  [1]
                  total                     20 L
                [1] [GIVEN] the caller's value
                """);
    }

    @Test
    void aBadLineSaysWhyAndLeavesNoTotal() {
        Program program = contents(HEADER + ",EN 1057,23 x 1,5 m,,\nboiler,,,,,18 L\nbuffer,,,,1\n", "--text");
        assertThat(program.status()).isEqualTo(1);
        List<Map<String, String>> rows = program.rows();
        assertThat(rows.get(0)).containsEntry("item", "EN 1057, 23 x 1").containsEntry("typical", "");
        assertThat(rows.get(0).get("error"))
                .startsWith("size of EN 1057 \"23 x 1\" is not allowed: it must be one of 6 x 0.6, ");
        assertThat(rows.get(1)).containsEntry("typical", "18 L").containsEntry("error", "");
        assertThat(rows.get(2).get("error")).startsWith("line 4 has another number of cells than the header");
        assertThat(rows.get(3))
                .containsEntry("item", "total")
                .containsEntry("typical", "")
                .containsEntry("error", "2 of 3 lines could not be read, so a total would be too small; correct them");
    }

    @Test
    void aFileWithoutLinesHasNoTotal() {
        Program program = contents(HEADER);
        assertThat(program.status()).isEqualTo(1);
        assertThat(program.rows().get(0).get("error")).startsWith("there is no line");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|it is empty; it must begin with a header of the columns item, standard, size, length, count, volume",
                "item,weight|the header has the unknown column \"weight\"; the columns are item, standard, size, length, count,"
                        + " volume",
                "item,item|the header has the column item twice; keep one of them",
                "item,\"vol\"ume|a double quote is out of place",
            })
    void aFileThatCannotBeRead(String file, String why) {
        Program program = contents(file + "\n".repeat(file.isEmpty() ? 0 : 1));
        assertThat(program.status()).isEqualTo(2);
        assertThat(program.out()).isEmpty();
        assertThat(program.err()).startsWith("ullage contents: standard input: " + why);
    }

    @Test
    void bytesThatAreNotUtf8() {
        byte[] latin = (HEADER + "K\u00fcche,,,,,18 L\n").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(contents(latin).status()).isEqualTo(2);
        assertThat(contents(latin).err()).contains("some bytes are not UTF-8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-file.csv", "bad\0name"})
    void aFileThatIsNotThere(String name) {
        Program program = Program.run("contents", name);
        assertThat(program.status()).isEqualTo(2);
        assertThat(program.err()).contains("there is no such file");
    }

    @Test
    void aVolumeTooLargeToPrintIsRefusedWithoutHalfATable() {
        Program program = contents(HEADER + "sea,,,,,1e306 m3\n");
        assertThat(program.status()).isEqualTo(1);
        assertThat(program.out()).isEmpty();
        assertThat(program.err()).startsWith("ullage contents: volume 1.0E306 m3 is not allowed");
    }
}
