package org.ullage.examples.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;

class ChargeCommandTest {

    private static final List<String> JOB = List.of(
            "charge",
            "loops.csv",
            "--id",
            "Quillbrook Yard, radiators",
            "--nominal",
            "80 L",
            "--air",
            "8 degC",
            "--water",
            "12 degC");

    private static Program run(String... more) {
        List<String> arguments = new ArrayList<>(JOB);
        arguments.addAll(List.of(more));
        return Program.run(arguments.toArray(String[]::new));
    }

    /** 1.207 bar at 20 degC under 0.9638 bar of air: (1.2074 + 0.9638) x 281.15/293.15 - 0.9638 = 1.1185 bar. */
    @Test
    void plansChargeAndFillOfTheDay() {
        Program plan = run();
        assertThat(plan.status()).isZero();
        assertThat(plan.err()).isEmpty();
        assertThat(plan.out())
                .startsWith("set the charge to 1.119 bar with the gas at 8 degC, water side empty\n")
                .contains("fill to between", "the gauge should read", "Check of the charge", "licensed person");
    }

    @Test
    void tellsWhatToDoAboutTheChargeThatWasFoundAndWhetherTheGaugeCanTell() {
        Map<String, String> row = run(
                        "--found",
                        "1.5 bar",
                        "--found-at",
                        "8 degC",
                        "--gauge",
                        "10 bar",
                        "--class",
                        "class 2.5",
                        "--csv")
                .row();
        assertThat(row)
                .containsEntry("charge_to_set", "1.119 bar")
                .containsEntry("found_action", "bleed")
                .containsEntry("gauge_error", "0.25 bar")
                .containsEntry("gauge_decides", "no")
                .containsEntry("better_gauge", "0 bar to 4 bar (0 psi to 58.02 psi), EN 837-1 class 2.5");
        assertThat(row.get("found_correction")).startsWith("-0.38");
    }

    @Test
    void answersInTheUnitsOfTheLoop() {
        Program plan = Program.run(
                "charge",
                "loops.csv",
                "--id",
                "Cobble Mill",
                "--nominal",
                "400 gal",
                "--air",
                "60 degF",
                "--water",
                "55 degF");
        assertThat(plan.out() + plan.err()).contains("psi");
    }

    @Test
    void anotherWayOfCheckingWithoutAValve() {
        assertThat(run("--no-valve").out()).contains("Check of the charge, no valve at the vessel");
    }

    @Test
    void badOptionsKeepTheLibrarysWords() {
        Program bad =
                Program.run("charge", "loops.csv", "--id", "x", "--nominal", "80", "--air", "8 degC", "--water", "1 K");
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err()).contains("--nominal").contains("the unit is missing");
        Program grade = run("--gauge", "4 bar", "--class", "good");
        assertThat(grade.status()).isEqualTo(1);
        assertThat(grade.err()).contains("--class \"good\" is not known; known are grade 4A");
        Program hot = run("--fill", "9 bar");
        assertThat(hot.status()).isEqualTo(1);
        assertThat(hot.err()).contains("take a larger vessel");
    }

    @Test
    void stepsOnRequest() {
        assertThat(run("--workings").out()).contains("  1  ", "[COMPUTED]");
    }
}
