package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class BeamSpanTest {

    private static BeamSpan span(double inches, BeamCase loading) {
        return new BeamSpan(BeamSection.CHANNEL, Length.of(inches, Units.INCH), loading);
    }

    private static double pounds(Force force) {
        return force.in(Units.POUND_FORCE);
    }

    /** Whole pounds-force, so half of one. */
    @ParameterizedTest
    @CsvFileSource(resources = "channel-loads.tsv", delimiter = '\t', useHeadersInDisplayName = true)
    void tabulatedLoads(
            double inches, double byStress, double l180, double l240, double l360, double centre, double cantilever) {
        BeamSpan uniform = span(inches, BeamCase.SIMPLE_UNIFORM);
        assertThat(pounds(uniform.allowableByStress())).isCloseTo(byStress, within(0.5));
        assertThat(pounds(uniform.allowable(DeflectionLimit.SPAN_180))).isCloseTo(l180, within(0.5));
        assertThat(pounds(uniform.allowable(DeflectionLimit.SPAN_240))).isCloseTo(l240, within(0.5));
        assertThat(pounds(uniform.allowable(DeflectionLimit.SPAN_360))).isCloseTo(l360, within(0.5));
        assertThat(pounds(span(inches, BeamCase.SIMPLE_CENTRE).allowableByStress()))
                .isCloseTo(centre, within(0.5));
        assertThat(pounds(span(inches, BeamCase.CANTILEVER_END).allowableByStress()))
                .isCloseTo(cantilever, within(0.5));
    }

    @ParameterizedTest
    @EnumSource
    void theAllowableLoadsBringStressAndDeflectionToTheirLimits(BeamCase loading) {
        BeamSpan span = span(60, loading);
        assertThat(span.stress(span.allowableByStress()).in(Units.STRESS_PSI)).isCloseTo(25_000, within(1e-6));
        assertThat(span.deflection(span.allowableByDeflection(DeflectionLimit.SPAN_240))
                        .in(Units.INCH))
                .isCloseTo(0.25, within(1e-9));
    }

    @Test
    void slotsAndMovingLoadsTakeSomeOff() {
        BeamSpan plain = span(60, BeamCase.SIMPLE_UNIFORM);
        BeamSpan slotted = new BeamSpan(BeamSection.CHANNEL.slotted(), plain.span(), plain.loading());
        DeflectionLimit limit = DeflectionLimit.SPAN_240;
        assertThat(slotted.allowable(limit).dividedBy(plain.allowable(limit))).isCloseTo(0.95, within(1e-12));
        assertThat(plain.allowable(limit).dividedBy(plain.allowableDynamic(limit)))
                .isCloseTo(2.08, within(1e-12));
    }

    @Test
    void verdictTextAndWorkings() {
        BeamSpan span = span(60, BeamCase.SIMPLE_UNIFORM);
        assertThat(span.check(Force.poundsForce(400), DeflectionLimit.SPAN_240).passes())
                .isTrue();
        assertThat(span.check(Force.poundsForce(500), DeflectionLimit.SPAN_240).passes())
                .isFalse();
        assertThat(span.text(DeflectionLimit.SPAN_240, UnitSystem.IP)).contains("span 60 in: 485.1 lbf (span/240)");
        assertThat(span.workings(DeflectionLimit.SPAN_240).text(UnitSystem.IP))
                .contains("25000 psi * 0.202 in3 / (0.125 * 60 in)", "673.333 lbf", "[FROM_MEMORY]");
        assertThat(span.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("below 24 in"));
    }

    @Test
    void theTextNamesTheLoading() {
        assertThat(span(60, BeamCase.CANTILEVER_END).text(DeflectionLimit.SPAN_240, UnitSystem.IP))
                .contains(BeamCase.CANTILEVER_END.toString());
        assertThat(BeamCase.CANTILEVER_END.toString()).startsWith("cantilever");
    }

    @Test
    void aBeamNeedsStiffnessAndStrength() {
        BeamSection channel = BeamSection.CHANNEL;
        Stress none = Stress.psi(0);
        assertThatThrownBy(() -> new BeamSection(
                        "own", channel.modulus(), channel.secondMoment(), none, channel.allowable(), channel.source()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("modulus of elasticity");
        assertThatThrownBy(() -> new BeamSection(
                        "own", channel.modulus(), channel.secondMoment(), channel.elasticity(), none, channel.source()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("allowable bending stress");
    }

    @Test
    void spanIsNeeded() {
        assertThatThrownBy(() -> span(0, BeamCase.SIMPLE_UNIFORM)).isInstanceOf(OutOfRangeException.class);
    }
}
