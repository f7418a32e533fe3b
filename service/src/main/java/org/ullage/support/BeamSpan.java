package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Moment;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * A beam in one of the usual cases of loading: what it may carry by stress, W = f S / (m L), and by deflection,
 * W = y E I / (d L^3). For loads at any place see {@link Rack}. Immutable.
 *
 * @param section the beam
 * @param span span, or length of a cantilever, above zero
 * @param loading how it is held and loaded
 */
public record BeamSpan(BeamSection section, Length span, BeamCase loading) implements Serializable {

    private static final Constant DYNAMIC = new Constant(
            "dynamic",
            2.08,
            "1",
            Source.secondHand(
                    "metal-framing engineering data", "dynamic load: static load over 2.08", "a maker's data sheet"));

    /**
     * Checks the span.
     *
     * @param section the beam
     * @param span span
     * @param loading how it is held and loaded
     * @throws OutOfRangeException if the span is zero or negative
     */
    public BeamSpan {
        Inputs.requirePositive("span", span, "measure it between the supports");
    }

    /**
     * The greatest moment under a load.
     *
     * @param load load on one span, zero or more
     * @return m W L
     */
    public Moment moment(Force load) {
        return Moment.ofSi(loading.momentCoefficient() * load.si() * span.si());
    }

    /**
     * The greatest bending stress under a load.
     *
     * @param load load on one span, zero or more
     * @return M / S
     */
    public Stress stress(Force load) {
        return section.modulus().stress(moment(load));
    }

    /**
     * The greatest deflection under a load.
     *
     * @param load load on one span, zero or more
     * @return d W L^3 / (E I)
     */
    public Length deflection(Force load) {
        return Length.ofSi(loading.deflectionCoefficient() * load.si() * cubedSpanOverStiffness());
    }

    private double cubedSpanOverStiffness() {
        double stiffness = section.elasticity().si() * section.secondMoment().si();
        return span.si() * span.si() * span.si() / stiffness;
    }

    /**
     * The load that brings the allowable bending stress.
     *
     * @return f S / (m L)
     */
    public Force allowableByStress() {
        double moment = section.allowable().si() * section.modulus().si();
        return Force.ofSi(moment / (loading.momentCoefficient() * span.si()));
    }

    /**
     * The load that brings a deflection.
     *
     * @param limit the deflection allowed
     * @return y E I / (d L^3)
     */
    public Force allowableByDeflection(DeflectionLimit limit) {
        return Force.ofSi(limit.of(span).si() / (loading.deflectionCoefficient() * cubedSpanOverStiffness()));
    }

    /**
     * The load that the beam may carry.
     *
     * @param limit the deflection allowed
     * @return the smaller of the two by stress and by deflection
     */
    public Force allowable(DeflectionLimit limit) {
        Force byStress = allowableByStress();
        Force byDeflection = allowableByDeflection(limit);
        return byStress.compareTo(byDeflection) <= 0 ? byStress : byDeflection;
    }

    /**
     * The load that the beam may carry where it moves, is switched or shakes.
     *
     * @param limit the deflection allowed
     * @return the {@link #allowable} load over 2.08
     */
    public Force allowableDynamic(DeflectionLimit limit) {
        return allowable(limit).times(1 / DYNAMIC.value());
    }

    /**
     * A load against what the beam may carry.
     *
     * @param load load on one span, zero or more
     * @param limit the deflection allowed
     * @return the verdict with its margin
     */
    public LimitCheck<Force> check(Force load, DeflectionLimit limit) {
        return new LimitCheck<>(
                "load on " + section.name() + ", " + loading + ", " + limit, load, allowable(limit), section.source());
    }

    /**
     * What the reader must know.
     *
     * @return cautions, that about short spans and shear among them
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.ENGINEER, SupportCautions.CHANNEL);
    }

    /**
     * How the allowable load was reached, step by step.
     *
     * @param limit the deflection allowed
     * @return the steps with formulas, values and sources
     */
    public Workings workings(DeflectionLimit limit) {
        Term length = SupportText.term("L", span);
        Step stress = new Step(
                "load by bending stress, " + section.name(),
                "f * S / (m * L)",
                List.of(
                        Term.of("f", section.allowable()),
                        Term.of("S", section.modulus()),
                        Term.number("m", loading.momentCoefficient()),
                        length),
                Term.of("W_f", allowableByStress()),
                section.source());
        Step deflection = new Step(
                "load by deflection of " + limit + ", " + loading,
                "y * E * I / (d * L^3)",
                List.of(
                        SupportText.term("y", limit.of(span)),
                        Term.of("E", section.elasticity()),
                        Term.of("I", section.secondMoment()),
                        Term.number("d", loading.deflectionCoefficient()),
                        length),
                Term.of("W_y", allowableByDeflection(limit)),
                loading.source());
        Step least = new Step(
                "what the beam may carry",
                "min(W_f, W_y)",
                List.of(stress.result(), deflection.result()),
                Term.of("W", allowable(limit)),
                section.source());
        return new Workings("Load on a beam", List.of(stress, deflection, least));
    }

    /**
     * What the beam may carry, in words.
     *
     * @param limit the deflection allowed
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(DeflectionLimit limit, UnitSystem system) {
        return section.name() + ", " + loading + ", span " + SupportText.of(span, system) + ": "
                + SupportText.of(allowable(limit), system) + " (" + limit + "), moving loads "
                + SupportText.of(allowableDynamic(limit), system);
    }
}
