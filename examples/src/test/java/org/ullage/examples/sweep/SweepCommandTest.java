package org.ullage.examples.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ullage.examples.Program;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class SweepCommandTest {

    private static final String LOOPS = """
            id,method,vessel,fluid,contents,cold,hot,pipe,static_head,relief_setting
            mill,ashrae,bladder,water,1000 L,10 degC,80 degC,steel,10 m,3 bar
            """;

    private static Program sweep(String down, String across, String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("sweep", "-", "--id", "mill", "--down", down, "--across", across));
        arguments.addAll(List.of(more));
        return Program.run(
                new ByteArrayInputStream(LOOPS.getBytes(StandardCharsets.UTF_8)), arguments.toArray(String[]::new));
    }

    @Test
    void aCellIsWhatSizeAnswers() {
        Program program = sweep("hot=70 degC; 80 degC", "static_head=5 m; 10 m", "--csv");
        assertThat(program.status()).isZero();
        assertThat(program.out().lines().toList())
                .hasSize(5)
                .startsWith("hot_temperature,static_head,required_volume,error")
                .anyMatch(line -> line.startsWith("80 degC,10 m,"));
        String exact = Program.size(LOOPS).row().get("required_volume");
        assertThat(program.rows().get(3).get("required_volume"))
                .isEqualTo(Volume.parse(exact).text(UnitSystem.SI, 6));
    }

    @Test
    void theGridHasGapsWithReasons() {
        Program program = sweep("hot=60 degC..90 degC", "static_head=5 m..35 m", "--steps", "4");
        assertThat(program.status()).isZero();
        assertThat(program.out())
                .contains("hot temperature down, static head across.")
                .containsPattern("90 degC .* refused\n")
                .contains("refused; --csv says why")
                .contains("Local codes");
        assertThat(sweep("hot=60 degC..90 degC", "static_head=5 m..35 m", "--csv")
                        .out())
                .contains("above the cold pressure");
    }

    @Test
    void fluidsAreAnAxis() {
        Program program =
                sweep("fluid=water; propylene glycol 30 vol%", "relief_setting=2.5 bar..4 bar", "--steps", "2");
        assertThat(program.out())
                .contains("propylene glycol")
                .contains("2.5 bar")
                .contains("4 bar");
    }

    @Test
    void writesTheHeatMap(@TempDir Path folder) throws Exception {
        Path svg = folder.resolve("map.svg");
        assertThat(sweep("contents=500 L..2000 L", "hot=60 degC..90 degC", "--svg", svg.toString())
                        .status())
                .isZero();
        assertThat(Files.readString(svg)).startsWith("<svg").contains("required volume, L");
    }

    @Test
    void whatCannotBeSweptIsRefused() {
        assertThat(sweep("colour=red", "hot=60 degC..90 degC").err())
                .contains("\"colour=red\" is no axis")
                .contains("relief_setting");
        assertThat(sweep("hot", "hot=60 degC..90 degC").status()).isEqualTo(1);
        assertThat(sweep("hot=60 degC; 70 degC", "hot=60 degC..90 degC").err()).contains("hot temperature twice");
        assertThat(sweep("hot=60 parsecs", "static_head=5 m..10 m").err()).contains("60 parsecs");
        assertThat(sweep("hot=60 degC..90 degC", "static_head=5 m..10 m", "--steps", "1")
                        .err())
                .contains("number of values 1");
    }
}
