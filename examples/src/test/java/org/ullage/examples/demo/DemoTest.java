package org.ullage.examples.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.provenance.Provenance;
import org.ullage.published.Methods;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Step;

class DemoTest {

    private final Program demo = Program.run("demo");
    private final Sizing sizing = DemoBuilding.ready().by(Methods.ASHRAE).size();

    @Test
    void succeeds() {
        assertThat(demo.status()).isZero();
        assertThat(demo.err()).isEmpty();
    }

    @Test
    void saysThatTheBuildingIsInvented() {
        assertThat(demo.out()).startsWith("Expansion vessel of ").contains("(an invented building)");
    }

    @Test
    void hasItsSectionsInOrder() {
        assertThat(demo.out())
                .containsSubsequence(
                        "The job",
                        "The answer, by ",
                        "Warnings about this answer",
                        "Cautions for the work",
                        "The vessels, from an invented catalogue",
                        "The charge and the fill on the day",
                        "The steps of the check",
                        "Hung on the wall, each vessel",
                        "The same job by other methods",
                        "Workings, metric",
                        "Workings, inch-pound");
    }

    @Test
    void givesTheAnswerInBothSystemsSideBySide() {
        assertThat(demo.out().lines().filter(line -> line.startsWith("REQUIRED VOLUME")))
                .singleElement()
                .asString()
                .containsSubsequence(
                        sizing.requiredVolume().text(UnitSystem.SI),
                        sizing.requiredVolume().text(UnitSystem.IP));
    }

    @Test
    void comparesMethods() {
        for (Method method : ComparisonSection.METHODS) {
            assertThat(demo.out()).containsPattern("(?m)^" + method.name() + " +[0-9.]+ L +[0-9.]+ gal");
        }
    }

    @Test
    void showsEveryStepInBothSystems() {
        List<Step> steps = sizing.workings().steps();
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(steps)
                    .allSatisfy(step ->
                            assertThat(demo.out()).contains(step.result().text(system)));
        }
    }

    @Test
    void showsWhereEveryNumberComesFrom() {
        assertThat(demo.out()).contains("[" + Provenance.PUBLISHED + "]", "[" + Provenance.COMMON_PRACTICE + "]");
    }

    @Test
    void printsEveryCaution() {
        String words = demo.out().replaceAll("\\s+", " ");
        assertThat(sizing.cautions())
                .isNotEmpty()
                .allSatisfy(caution -> assertThat(words).contains(caution.text()));
        assertThat(sizing.warnings())
                .isNotEmpty()
                .allSatisfy(caution -> assertThat(words).contains(caution.text()));
    }
}
