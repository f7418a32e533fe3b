package org.ullage.support;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;
import org.ullage.quantity.Stress;

/**
 * The section of a beam, as bending sees it. Immutable.
 *
 * @param name in words
 * @param modulus section modulus S
 * @param secondMoment second moment of area I
 * @param elasticity modulus of elasticity E, above zero
 * @param allowable allowable bending stress, above zero
 * @param source where these come from
 */
public record BeamSection(
        String name,
        SectionModulus modulus,
        SecondMoment secondMoment,
        Stress elasticity,
        Stress allowable,
        Source source)
        implements Serializable {

    private static final Source FRAMING = Source.fromMemory(
            "published metal-framing engineering data",
            "cold-formed channel 1-5/8 x 1-5/8 in, 12 gauge, strong axis: section properties from memory, 25,000 psi read");

    /** Cold-formed channel 1-5/8 x 1-5/8 in, 12 gauge, open side up or down, unpunched. */
    public static final BeamSection CHANNEL = channel(
            SectionModulus.cubicInches(0.202),
            SecondMoment.quarticInches(0.185),
            Stress.psi(29.5e6),
            Stress.psi(25_000),
            FRAMING);

    /** What slots or holes take off the beam load. */
    private static final Constant SLOTS = new Constant(
            "slots",
            0.05,
            "1",
            Source.secondHand(
                    "metal-framing engineering data",
                    "slotted or punched channel: reduce by 5 %",
                    "a maker's data sheet"));

    /**
     * Checks the stresses.
     *
     * @param name in words
     * @param modulus section modulus
     * @param secondMoment second moment of area
     * @param elasticity modulus of elasticity
     * @param allowable allowable bending stress
     * @param source where these come from
     * @throws OutOfRangeException if one of the stresses is zero or negative
     */
    public BeamSection {
        Inputs.requirePositive("modulus of elasticity", elasticity, "take it from the data of the beam");
        Inputs.requirePositive("allowable bending stress", allowable, "take it from the data of the beam");
    }

    private static BeamSection channel(
            SectionModulus modulus, SecondMoment secondMoment, Stress elasticity, Stress allowable, Source source) {
        return new BeamSection(
                "channel 1-5/8 x 1-5/8 in, 12 gauge", modulus, secondMoment, elasticity, allowable, source);
    }

    /**
     * The same beam with slots or holes, which carries 5 % less; it counts as less stiff by the same share.
     *
     * @return the reduced section
     */
    public BeamSection slotted() {
        double left = 1 - SLOTS.value();
        return new BeamSection(
                name + ", slotted (5 % off)",
                modulus.times(left),
                secondMoment.times(left),
                elasticity,
                allowable,
                source);
    }
}
