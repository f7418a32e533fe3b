package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

class LimitCheckTest {

    private static LimitCheck<Force> check(double actual, double allowed) {
        return new LimitCheck<>("pull", Force.newtons(actual), Force.newtons(allowed), Source.given());
    }

    @Test
    void passesUpToTheLimit() {
        assertThat(check(100, 100).passes()).isTrue();
        assertThat(check(100.1, 100).passes()).isFalse();
        assertThat(check(80, 100).margin()).isCloseTo(0.2, within(1e-15));
        assertThat(check(150, 100).margin()).isCloseTo(-0.5, within(1e-15));
        assertThat(check(150, 100).use()).isCloseTo(1.5, within(1e-15));
    }

    @Test
    void failureIsAnAnswerInWords() {
        assertThat(check(80, 100).text(UnitSystem.SI))
                .isEqualTo("pull: passes, 80 N of 100 N (80 %) [GIVEN] the caller's value");
        assertThat(check(150, 100).text(UnitSystem.SI)).startsWith("pull: REFUSED, 150 N of 100 N (150 %)");
    }

    @Test
    void nothingAllowed() {
        LimitCheck<Mass> none = new LimitCheck<>("lift", Mass.kilograms(5), Mass.kilograms(0), Source.given());
        assertThat(none.passes()).isFalse();
        assertThat(none.text(UnitSystem.SI)).startsWith("lift: REFUSED, 5 kg of 0 kg [");
        assertThatThrownBy(none::use).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void signsAreRefused() {
        assertThatThrownBy(() -> check(-1, 100)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> check(1, -100)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aUseThatIsNoFiniteNumberOfPercentIsRefused() {
        LimitCheck<Force> check =
                new LimitCheck<>("pull", Force.newtons(1), Force.newtons(1e-307), Source.commonPractice("test"));
        assertThatThrownBy(() -> check.text(UnitSystem.SI))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("use of what is allowed");
    }
}
