package org.ullage.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** The formula with its values: made from the formula, so the two cannot disagree. */
class StepTest {

    private static final Source SOURCE = Source.published("a book", "eq. 1");

    private static final Term RESULT = Term.number("y", 0);

    @Test
    void everySymbolIsReplacedInEitherSystem() {
        Step step = step(
                "V_x / (1 - p_i / p_f)",
                Term.of("V_x", Volume.litres(26.2)),
                Term.of("p_i", AbsolutePressure.bar(2.5)),
                Term.of("p_f", AbsolutePressure.bar(3.75)));
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo("26.2 L / (1 - 2.5 bar abs / 3.75 bar abs)");
        assertThat(step.substituted(UnitSystem.IP)).isEqualTo("6.92131 gal / (1 - 36.2594 psi abs / 54.3892 psi abs)");
    }

    @ParameterizedTest
    @CsvSource({
        "p + p_i + p_i2 + xp, 1 + 2 + 3 + xp",
        "p_i*p, 2*1",
        "(p)/(p_i), (1)/(2)",
        "p_i_max, p_i_max",
        "max(p; p_i), max(1; 2)",
        "p + 0.3 bar, 1 + 0.3 bar",
        "p p, 1 1",
        "P, P",
    })
    void onlyWholeSymbolsAreReplaced(String formula, String substituted) {
        Step step = step(formula, Term.number("p", 1), Term.number("p_i", 2), Term.number("p_i2", 3));
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo(substituted);
    }

    @ParameterizedTest
    @CsvSource({
        "0.31 + 3.9e-4 * e, 0.31 + 3.9e-4 * 5",
        "1E5 * e, 1E5 * 5",
        "2e, 2e",
        "2 e, 2 5",
        ".5e, .5e",
    })
    void theLettersOfANumberAreNoSymbols(String formula, String substituted) {
        assertThat(step(formula, Term.number("e", 5), Term.number("E5", 6)).substituted(UnitSystem.SI))
                .isEqualTo(substituted);
    }

    @Test
    void greekSymbolsAreWholeSymbols() {
        Step step = step(
                "3 * \u03b1 * \u0394t + t",
                Term.number("\u03b1", 0.5),
                Term.of("\u0394t", TemperatureDifference.kelvins(72)),
                Term.number("t", 4));
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo("3 * 0.5 * 72 K + 4");
    }

    @ParameterizedTest
    @CsvSource({
        "a - d, 1 - (-0.5 bar)",
        "d, -0.5 bar",
        "a * d^2, 1 * (-0.5 bar)^2",
        "q^2 + a^2, (2 bar)^2 + 1^2",
        "q / a, 2 bar / 1",
    })
    void aValueThatWouldReadWronglyStandsInBrackets(String formula, String substituted) {
        Step step = step(
                formula,
                Term.number("a", 1),
                Term.of("d", PressureDifference.bar(-0.5)),
                Term.of("q", PressureDifference.bar(2)));
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo(substituted);
    }

    @Test
    void aValueIsNotReadAsASymbolAgain() {
        Step step = step("L + a", Term.of("a", Volume.litres(5)), Term.number("L", 7));
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo("7 + 5 L");
    }

    @Test
    void aGivenValueHasNoTerms() {
        Step step = Step.given("contents", Term.of("V_s", Volume.litres(1200)), "given", Source.given());
        assertThat(step.terms()).isEmpty();
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo("given");
        assertThat(step.result().text(UnitSystem.SI)).isEqualTo("1200 L");
    }

    @Test
    void laterChangesOfTheListDoNotReachIt() {
        List<Term> terms = new ArrayList<>(List.of(Term.number("p", 1)));
        Step step = new Step("test", "p", terms, RESULT, SOURCE);
        terms.clear();
        assertThat(step.substituted(UnitSystem.SI)).isEqualTo("1");
    }

    @Test
    void equalPartsMakeEqualSteps() {
        Step step = step("a", Term.of("a", Volume.litres(5)));
        assertThat(step)
                .isEqualTo(step("a", Term.of("a", Volume.litres(5))))
                .hasSameHashCodeAs(step("a", Term.of("a", Volume.litres(5))));
        assertThat(step).isNotEqualTo(step("a", Term.of("a", Volume.litres(6))));
    }

    private static Step step(String formula, Term... terms) {
        return new Step("test", formula, List.of(terms), RESULT, SOURCE);
    }
}
