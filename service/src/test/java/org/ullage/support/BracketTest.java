package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class BracketTest {

    private static final AnchorStrength STRENGTH = new AnchorStrength(Force.poundsForce(300), Force.poundsForce(200));

    private static Bracket bracket(double pounds, double outward) {
        return new Bracket(
                Mass.pounds(pounds),
                Length.of(10, Units.INCH),
                Length.of(12, Units.INCH),
                2,
                4,
                Force.poundsForce(outward),
                STRENGTH);
    }

    /** 120 lb at 10 in: 1200 lbf in, over 12 in 100 lbf for two anchors; shear 120 / 4. */
    @Test
    void byHand() {
        Bracket bracket = bracket(120, 0);
        assertThat(bracket.moment().in(Units.POUND_FORCE_INCH)).isCloseTo(1200, within(1e-9));
        assertThat(bracket.tensionPerAnchor().in(Units.POUND_FORCE)).isCloseTo(50, within(1e-9));
        assertThat(bracket.shearPerAnchor().in(Units.POUND_FORCE)).isCloseTo(30, within(1e-9));
        assertThat(bracket.combinedUse()).isCloseTo(50.0 / 300 + 30.0 / 200, within(1e-12));
        assertThat(bracket.passes()).isTrue();
        assertThat(bracket(120, 60).tensionPerAnchor().in(Units.POUND_FORCE)).isCloseTo(80, within(1e-9));
    }

    @Test
    void eachMayPassWhereBothTogetherDoNot() {
        Bracket bracket = bracket(480, 0);
        assertThat(bracket.tensionCheck().passes()).isTrue();
        assertThat(bracket.shearCheck().passes()).isTrue();
        assertThat(bracket.passes()).isFalse();
        assertThat(bracket.text(UnitSystem.IP))
                .contains("pull on a top anchor: passes", "both together: REFUSED, 127 %");
    }

    @Test
    void pullAndShearMayUseUpTheAnchorsWhole() {
        Bracket loaded = bracket(120, 0);
        AnchorStrength twice = new AnchorStrength(
                loaded.tensionPerAnchor().times(2), loaded.shearPerAnchor().times(2));
        Bracket full = new Bracket(loaded.carried(), loaded.arm(), loaded.rows(), 2, 4, Force.newtons(0), twice);
        assertThat(full.combinedUse()).isEqualTo(1);
        assertThat(full.passes()).isTrue();
    }

    @Test
    void sizesHaveNoSign() {
        assertThatThrownBy(() -> bracket(120, -60))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("force away from the wall")
                .hasMessageContaining("-60 lbf");
        Bracket bracket = bracket(120, 0);
        assertThatThrownBy(() -> new Bracket(
                        bracket.carried(), Length.metres(-0.2), bracket.rows(), 2, 4, Force.newtons(0), STRENGTH))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("distance from the wall")
                .hasMessageContaining("-200 mm");
    }

    @Test
    void workingsAndCautions() {
        assertThat(bracket(120, 0).workings().text(UnitSystem.IP))
                .contains("(1200 lbf in / 12 in + 0 lbf) / 2", "50 lbf", "30 lbf");
        assertThat(bracket(120, 0).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("Edge distance"));
    }

    @ParameterizedTest
    @CsvSource({"0, 12, 2, 4", "10, 0, 2, 4", "10, 12, 0, 4", "10, 12, 2, 1"})
    void badInput(double kilograms, double rows, int top, int all) {
        assertThatThrownBy(() -> new Bracket(
                        Mass.kilograms(kilograms),
                        Length.metres(0.2),
                        Length.metres(rows),
                        top,
                        all,
                        Force.newtons(0),
                        STRENGTH))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void anchorsHaveNoDefault() {
        assertThatThrownBy(() -> new AnchorStrength(Force.newtons(0), Force.newtons(1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("approval");
        assertThatThrownBy(() -> new AnchorStrength(Force.newtons(1), Force.newtons(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("shear");
    }
}
