package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class RackTest {

    private static Rack rack(double pounds, int channels) {
        SimpleBeam vessels = new SimpleBeam(
                Length.of(60, Units.INCH),
                List.of(
                        PointLoad.of(Mass.pounds(pounds), Length.of(15, Units.INCH)),
                        PointLoad.of(Mass.pounds(pounds), Length.of(40, Units.INCH))));
        return new Rack(vessels, channels, BeamSection.CHANNEL, DeflectionLimit.SPAN_240);
    }

    /** Two vessels of 200 lb on two channels: 100 lbf each at 15 and 40 of 60 in: R_l = 75 + 33.3 = 108.3, M = 108.3 x 40 - 100 x 25 = 1833.3 lbf in. */
    @Test
    void byHand() {
        Rack rack = rack(200, 2);
        assertThat(rack.rodLoad().in(Units.POUND_FORCE)).isCloseTo(325.0 / 3, within(1e-9));
        assertThat(rack.stressCheck().actual().in(Units.STRESS_PSI)).isCloseTo(5500.0 / 3 / 0.202, within(1e-6));
        assertThat(rack.stressCheck().passes()).isTrue();
        assertThat(rack.deflectionCheck().passes()).isTrue();
        assertThat(rack.rodCheck(HangerRod.ROD_3_8, RodLoads.LOWEST).passes()).isTrue();
        assertThat(rack.anchorCheck(Force.poundsForce(100)).passes()).isFalse();
        assertThat(rack.anchorCheck(Force.poundsForce(110)).passes()).isTrue();
    }

    @Test
    void oneChannelCarriesTwice() {
        assertThat(rack(200, 1).rodLoad().dividedBy(rack(200, 2).rodLoad())).isCloseTo(2, within(1e-12));
        assertThat(rack(200, 1).stressCheck().use())
                .isCloseTo(2 * rack(200, 2).stressCheck().use(), within(1e-12));
    }

    @Test
    void textSaysWhatFails() {
        assertThat(rack(1000, 1).text(UnitSystem.IP)).contains("bending stress of channel", "REFUSED");
        assertThat(rack(200, 2).text(UnitSystem.SI))
                .contains("passes", "mm", "pull on the most loaded rod and anchor: 481.9 N");
    }

    @Test
    void workingsShowReactionAndMoment() {
        assertThat(rack(200, 2).workings().text(UnitSystem.IP))
                .contains(
                        "R_l * x - P_1 * (x - a_1)",
                        "91.6667 lbf",
                        "1833.33 lbf in",
                        "100 lbf * 15 in / 60 in + 100 lbf * 40 in / 60 in",
                        "channels in load 1, 381 mm (15 in) from the left",
                        "channels in load 2, 1016 mm (40 in) from the left",
                        "greatest bending moment, under load 2");
        assertThat(rack(200, 2).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("crippling"));
    }

    @Test
    void onlyLoadsBeforeThePlaceEnterItsMoment() {
        assertThat(rack(200, 2).workings().steps())
                .anySatisfy(step -> assertThat(step.formula()).isEqualTo("R_l * x - P_1 * (x - a_1)"));
    }

    @Test
    void badInput() {
        assertThatThrownBy(() -> rack(200, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> rack(200, 1).anchorCheck(Force.newtons(0))).isInstanceOf(OutOfRangeException.class);
    }
}
