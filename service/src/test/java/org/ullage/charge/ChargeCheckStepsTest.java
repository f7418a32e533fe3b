package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ChargeCheckStepsTest {

    private static List<String> steps(VesselConnection connection) {
        return new ChargeCheckSteps(connection)
                .steps().stream().map(CheckStep::text).toList();
    }

    @ParameterizedTest
    @EnumSource(VesselConnection.class)
    void theWaterSideIsEmptyBeforeTheGasIsRead(VesselConnection connection) {
        List<String> steps = steps(connection);
        int empty = first(
                steps, connection == VesselConnection.WITHOUT_VALVE ? "empty and open to the air" : "no more water");
        int read = first(steps, "Read the gas valve");
        int set = first(steps, "Set the charge");
        int fill = first(steps, "Fill to");
        assertThat(List.of(first(steps, "let the loop cool"), empty, read, set, fill, steps.size() - 1))
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(first(steps, "corrected for height")).isBetween(read, set);
        assertThat(steps).doesNotHaveDuplicates();
    }

    private static int first(List<String> steps, String words) {
        List<String> found = steps.stream().filter(step -> step.contains(words)).toList();
        assertThat(found).as(words).isNotEmpty();
        return steps.indexOf(found.get(0));
    }

    @Test
    void onlyALoopWithoutAValveHasItsVesselTakenOff() {
        assertThat(steps(VesselConnection.LOCKABLE_VALVE_WITH_DRAIN))
                .anyMatch(step -> step.contains("lock it open"))
                .noneMatch(step -> step.contains("take it off"));
        assertThat(steps(VesselConnection.WITHOUT_VALVE))
                .anyMatch(step -> step.contains("take it off"))
                .anyMatch(step -> step.contains("Keep it short"))
                .noneMatch(step -> step.contains("lock it open"));
        assertThat(new ChargeCheckSteps(VesselConnection.WITHOUT_VALVE).text())
                .startsWith("Check of the charge, no valve at the vessel\n");
    }

    @ParameterizedTest
    @EnumSource(VesselConnection.class)
    void theDangersAreNamed(VesselConnection connection) {
        String text = new ChargeCheckSteps(connection).text();
        for (String danger : List.of("scalds", "never oxygen", "regulator", "glycol", "weighs", "licensed person")) {
            assertThat(text).contains(danger);
        }
        for (int i = 0; i < steps(connection).size(); i++) {
            assertThat(text).contains("\n" + (i + 1) + ". " + steps(connection).get(i));
        }
        assertThat(text).contains("1. Note the reading").matches("\\A\\p{ASCII}*\\z");
    }
}
