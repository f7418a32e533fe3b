package org.ullage.examples.size;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.examples.Program;
import org.ullage.method.Method;
import org.ullage.published.Methods;

class MethodsOptionTest {

    private static final String PLAIN_STEEL = ",plain-steel,water,3000 gal,40 degF,220 degF,steel,10 psi,25 psi,,,,\n";

    private static Program run(String lines) {
        return Program.size(Program.HEADER + "\n" + lines, "--methods");
    }

    @Test
    void addsTheMethodAfterTheId() {
        assertThat(run("a,ashrae" + PLAIN_STEEL).out()).startsWith("id,method,required_volume,");
    }

    @Test
    void putsALineToEveryMethod() {
        Program run = run("a,ashrae" + PLAIN_STEEL);

        assertThat(run.rows())
                .extracting(row -> row.get("method"))
                .containsExactlyElementsOf(
                        Methods.all().stream().map(Method::name).toList());
        assertThat(run.rows()).extracting(row -> row.get("id")).containsOnly("a");
    }

    @Test
    void givesTheReasonOfAMethodThatRefusesWithoutFailing() {
        Program run = run("a,ashrae" + PLAIN_STEEL);

        assertThat(run.rows())
                .filteredOn(row -> row.get("method").equals("en-12828"))
                .singleElement()
                .satisfies(row -> assertThat(row.get("error")).contains("vessel ", "plain-steel"));
        assertThat(run.status()).isZero();
    }

    @Test
    void aRefusalNamesTheMethodThatWasAskedAndTheColumnAtFault() {
        Program run = run("a,ashrae,bladder,water,3000 gal,40 degF,180 degF,steel,14 psi,25 psi,,,,\n");

        assertThat(run.rows())
                .anySatisfy(row ->
                        assertThat(row.get("error")).startsWith("method \"idae-022\": contents of the collectors"))
                .anySatisfy(row -> assertThat(row.get("error")).startsWith("cold_pressure \"14 psi\": cold pressure"));
    }

    @Test
    void failsWhenTheNamedMethodRefuses() {
        assertThat(run("a,en-12828" + PLAIN_STEEL).status()).isEqualTo(1);
    }

    @Test
    void givesTheSameAnswerAsTheMethodAlone() {
        String alone =
                Program.size(Program.HEADER + "\na,ashrae" + PLAIN_STEEL).row().get("required_volume");

        assertThat(run("a,ashrae" + PLAIN_STEEL).rows().get(0)).containsEntry("required_volume", alone);
    }

    @Test
    void aLineThatCannotBeReadHasOneRowUnderTheMethodItNames() {
        Program run =
                run("a,ashrae,bladder,water,lots,40 degF,220 degF,steel,10 psi,25 psi,,,,\nb,guess" + PLAIN_STEEL);

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.rows()).extracting(row -> row.get("method")).containsExactly("ashrae", "guess");
        assertThat(run.rows()).allSatisfy(row -> assertThat(row.get("error")).isNotEmpty());
    }
}
