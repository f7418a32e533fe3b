package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

class SimpleBeamTest {

    private static PointLoad load(double newtons, double metres) {
        return new PointLoad(Force.newtons(newtons), Length.metres(metres));
    }

    private static SimpleBeam beam(PointLoad... loads) {
        return new SimpleBeam(Length.metres(2), List.of(loads));
    }

    private static double stiffness() {
        return BeamSection.CHANNEL.elasticity().si()
                * BeamSection.CHANNEL.secondMoment().si();
    }

    /** 600 N at 0.5 m and 400 N at 1.5 m of 2 m: R = 450 + 100 and 150 + 300; M = 275 and 225 N m. */
    @Example
    void byHand() {
        SimpleBeam beam = beam(load(600, 0.5), load(400, 1.5));
        assertThat(beam.leftReaction().si()).isCloseTo(550, within(1e-9));
        assertThat(beam.rightReaction().si()).isCloseTo(450, within(1e-9));
        assertThat(beam.momentAt(Length.metres(1.5)).si()).isCloseTo(225, within(1e-9));
        assertThat(beam.greatestMoment().si()).isCloseTo(275, within(1e-9));
    }

    /** P b (L^2 - b^2)^1.5 / (9 sqrt(3) L E I) for one load, b the shorter part (beam tables, from memory). */
    @Example
    void greatestDeflectionOfOneLoad() {
        double b = 0.6;
        double expected = 1000 * b * Math.pow(4 - b * b, 1.5) / (9 * Math.sqrt(3) * 2 * stiffness());
        assertThat(beam(load(1000, b)).greatestDeflection(BeamSection.CHANNEL).si())
                .isCloseTo(expected, within(1e-12));
    }

    @Property
    void agreesWithTheUsualCases(@ForAll @DoubleRange(min = 1, max = 5000) double newtons) {
        Force whole = Force.newtons(newtons);
        BeamSpan centre = new BeamSpan(BeamSection.CHANNEL, Length.metres(2), BeamCase.SIMPLE_CENTRE);
        SimpleBeam one = beam(load(newtons, 1));
        assertThat(one.greatestMoment().dividedBy(centre.moment(whole))).isCloseTo(1, within(1e-12));
        assertThat(one.greatestDeflection(BeamSection.CHANNEL).dividedBy(centre.deflection(whole)))
                .isCloseTo(1, within(1e-12));
        BeamSpan quarters = new BeamSpan(BeamSection.CHANNEL, Length.metres(2), BeamCase.SIMPLE_QUARTER_POINTS);
        SimpleBeam two = beam(load(newtons / 2, 0.5), load(newtons / 2, 1.5));
        assertThat(two.greatestMoment().dividedBy(quarters.moment(whole))).isCloseTo(1, within(1e-12));
        assertThat(two.greatestDeflection(BeamSection.CHANNEL).dividedBy(quarters.deflection(whole)))
                .isCloseTo(1, within(1e-12));
    }

    @Property
    void nowhereSagsMoreThanTheGreatest(
            @ForAll @DoubleRange(min = 0, max = 2) double a,
            @ForAll @DoubleRange(min = 0, max = 2) double b,
            @ForAll @DoubleRange(min = 0, max = 2) double x) {
        SimpleBeam beam = beam(load(700, a), load(300, b));
        assertThat(beam.leftReaction().si() + beam.rightReaction().si()).isCloseTo(1000, within(1e-9));
        assertThat(beam.deflectionAt(Length.metres(x), BeamSection.CHANNEL).si())
                .isLessThanOrEqualTo(
                        beam.greatestDeflection(BeamSection.CHANNEL).si() + 1e-15);
        assertThat(beam.momentAt(Length.metres(x)).si())
                .isLessThanOrEqualTo(beam.greatestMoment().si() + 1e-9);
    }

    @Example
    void badInput() {
        assertThatThrownBy(() -> beam()).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> beam(load(1, 2.1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("overhang");
        assertThatThrownBy(() -> new SimpleBeam(Length.metres(0), List.of(load(1, 0))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("span");
        assertThatThrownBy(() -> beam(load(1, 1)).deflectionAt(Length.metres(2.5), BeamSection.CHANNEL))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("place on the beam");
        assertThatThrownBy(() -> load(1, -0.1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("measure it from the left support");
        assertThatThrownBy(() -> load(-1, 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> beam(load(1, 1)).momentAt(Length.metres(2.5))).isInstanceOf(OutOfRangeException.class);
    }
}
