package org.ullage.examples.service;

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

class DiagnoseCommandTest {

    @TempDir
    private Path folder;

    private static final List<String> SYSTEM = List.of(
            "loops.csv",
            "--id",
            "Quillbrook Yard, radiators",
            "--nominal",
            "110 L",
            "--fill",
            "1.35 bar",
            "--fill-at",
            "14 degC");

    private static Program run(String command, List<String> system, String... more) {
        List<String> arguments = new ArrayList<>(List.of(command));
        arguments.addAll(system);
        arguments.addAll(List.of(more));
        return Program.run(arguments.toArray(String[]::new));
    }

    private static Program diagnose(String hot, String... more) {
        List<String> system = new ArrayList<>(SYSTEM);
        system.addAll(List.of("--cold", "1.4 bar", "--cold-at", "18 degC", "--hot", hot, "--hot-at", "62 degC"));
        system.addAll(List.of("--gauge", "4 bar", "--class", "class 1"));
        return run("diagnose", system, more);
    }

    /** What the curve says of a sound vessel at 62 degC is no sign of failure. */
    @Test
    void aSoundVesselIsHealthyAndAWiderSwingIsLostGas() {
        Program sound = diagnose("1.85 bar");
        assertThat(sound.err()).isEmpty();
        assertThat(sound.out()).startsWith("Most likely healthy");
        Program lost = diagnose("2.75 bar");
        assertThat(lost.out()).startsWith("Most likely the charge is wrong, low charge (");
        assertThat(lost.out()).doesNotContain("100 %");
    }

    @Test
    void theMeasuredChargeDecides() {
        Map<String, String> first = diagnose("2.75 bar", "--measured", "0.2 bar", "--measured-at", "15 degC", "--csv")
                .rows()
                .get(0);
        assertThat(first).containsEntry("hypothesis", "low charge").containsEntry("decided", "yes");
    }

    @Test
    void signsAreReadAndWrongOnesListed() {
        assertThat(diagnose("2.75 bar", "--sign", "relief-drips-hot,dull-all-over")
                        .out())
                .contains("relief valve drips when hot");
        assertThat(diagnose("2.75 bar", "--sign", "blue").err()).contains("known are relief-dry");
        assertThat(diagnose("2.75 bar", "--measured", "1 bar").err()).contains("--measured-at");
    }

    @Test
    void writesThePage() throws IOException {
        Path page = folder.resolve("diagnosis.html");
        assertThat(diagnose("2.75 bar", "--html", page.toString()).status()).isZero();
        assertThat(Files.readString(page)).contains("<svg", "readings", "What it may be");
        assertThat(diagnose("2.75 bar", "--html", "no/such/folder/x.html").err())
                .contains("cannot be written");
    }

    @Test
    void plotsTheCurve() throws IOException {
        Path chart = folder.resolve("curve.svg");
        Program plot = run("plot", SYSTEM, "--svg", chart.toString());
        assertThat(plot.err()).isEmpty();
        assertThat(plot.out()).contains("temperature alone is no sign of failure");
        assertThat(Files.readString(chart)).startsWith("<svg").contains("relief setting");
        List<Map<String, String>> rows = run("plot", SYSTEM, "--csv").rows();
        assertThat(rows).hasSize(15);
        assertThat(rows.get(14)).containsEntry("temperature", "80 degC");
        assertThat(rows.get(14).get("pressure")).endsWith("bar");
    }
}
