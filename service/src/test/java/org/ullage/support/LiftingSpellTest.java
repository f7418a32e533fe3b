package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.quantity.OutOfRangeException;

class LiftingSpellTest {

    /** NIOSH 94-110, frequency and coupling tables (from memory). */
    @Example
    void rows() {
        assertThat(LiftingSpell.UP_TO_1_HOUR.multiplier(0.2, false)).isEqualTo(1);
        assertThat(LiftingSpell.UP_TO_2_HOURS.multiplier(0.2, true)).isEqualTo(0.95);
        assertThat(LiftingSpell.UP_TO_8_HOURS.multiplier(0.1, false)).isEqualTo(0.85);
        assertThat(LiftingSpell.UP_TO_8_HOURS.multiplier(9, false)).isZero();
        assertThat(LiftingSpell.UP_TO_8_HOURS.multiplier(9, true)).isEqualTo(0.15);
        assertThat(LiftingSpell.UP_TO_1_HOUR.multiplier(15, true)).isEqualTo(0.28);
        assertThat(LiftingSpell.UP_TO_1_HOUR.multiplier(15.1, true)).isZero();
        assertThat(LiftingSpell.UP_TO_1_HOUR.multiplier(2.5, true)).isEqualTo(0.88);
        assertThat(Grip.GOOD.multiplier(false)).isEqualTo(1);
        assertThat(Grip.FAIR.multiplier(false)).isEqualTo(0.95);
        assertThat(Grip.FAIR.multiplier(true)).isEqualTo(1);
        assertThat(Grip.POOR.multiplier(true)).isEqualTo(0.9);
    }

    @Example
    void aCountIsNotNegative() {
        assertThatThrownBy(() -> LiftingSpell.UP_TO_1_HOUR.multiplier(-1, true))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("lifts per minute");
    }

    @Property
    void moreOrLongerIsNeverEasier(
            @ForAll LiftingSpell spell,
            @ForAll boolean high,
            @ForAll @DoubleRange(min = 0, max = 16) double frequency,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        double multiplier = spell.multiplier(frequency, high);
        assertThat(multiplier).isBetween(0.0, 1.0);
        assertThat(spell.multiplier(frequency + more, high)).isLessThanOrEqualTo(multiplier);
        assertThat(LiftingSpell.UP_TO_1_HOUR.multiplier(frequency, high)).isGreaterThanOrEqualTo(multiplier);
        assertThat(LiftingSpell.UP_TO_8_HOURS.multiplier(frequency, high)).isLessThanOrEqualTo(multiplier);
        assertThat(spell.multiplier(frequency, true)).isGreaterThanOrEqualTo(spell.multiplier(frequency, false));
    }
}
