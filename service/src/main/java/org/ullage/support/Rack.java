package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * Several vessels on one or more channels side by side, each channel held by a rod and anchor at either end. The channels share the
 * vessels evenly. Immutable.
 *
 * @param vessels all vessels with their places, by their waterlogged weights
 * @param channels channels under the vessels, 1 or more
 * @param section one channel
 * @param limit how far it may sag
 */
public record Rack(SimpleBeam vessels, int channels, BeamSection section, DeflectionLimit limit)
        implements Serializable {

    /**
     * Checks the number of channels.
     *
     * @param vessels all vessels with their places
     * @param channels channels under the vessels
     * @param section one channel
     * @param limit how far it may sag
     * @throws OutOfRangeException if there is no channel
     */
    public Rack {
        Inputs.requireCount("channels under the vessels", channels, 1, "two are usual");
    }

    /**
     * One channel with its share of the vessels.
     *
     * @return the beam
     */
    public SimpleBeam channel() {
        return vessels.times(1.0 / channels);
    }

    /**
     * Bending stress of a channel against what it may carry.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Stress> stressCheck() {
        Stress stress = section.modulus().stress(channel().greatestMoment());
        return new LimitCheck<>("bending stress of " + section.name(), stress, section.allowable(), section.source());
    }

    /**
     * Sag of a channel against the limit.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Length> deflectionCheck() {
        return new LimitCheck<>(
                "deflection of " + section.name() + ", " + limit,
                channel().greatestDeflection(section),
                limit.of(vessels.span()),
                limit.source());
    }

    /**
     * Pull on the rod and the anchor that carry most.
     *
     * @return the larger reaction of one channel
     */
    public Force rodLoad() {
        Force left = channel().leftReaction();
        Force right = channel().rightReaction();
        return left.compareTo(right) >= 0 ? left : right;
    }

    /**
     * The most loaded rod against its safe load.
     *
     * @param rod the rods
     * @param basis whose safe load
     * @return the verdict with its margin
     */
    public LimitCheck<Force> rodCheck(HangerRod rod, RodLoads basis) {
        return rod.check(rodLoad(), basis);
    }

    /**
     * The most loaded anchor, one to each rod, against what it may carry.
     *
     * @param allowable allowable pull on one anchor in its base, above zero; there is no default
     * @return the verdict with its margin
     * @throws OutOfRangeException if the allowable pull is zero or negative
     */
    public LimitCheck<Force> anchorCheck(Force allowable) {
        Inputs.requirePositive("allowable anchor pull", allowable, "take it from the anchor's approval for this base");
        return new LimitCheck<>("pull on an anchor", rodLoad(), allowable, Source.given());
    }

    /**
     * What the reader must know.
     *
     * @return cautions, those about channel, rods and anchors among them
     */
    public List<Caution> cautions() {
        return List.of(
                SupportCautions.ENGINEER,
                SupportCautions.WATERLOGGED,
                SupportCautions.CHANNEL,
                SupportCautions.ANCHORS);
    }

    /**
     * How moment, stress, sag and pull were reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        return RackWorkings.of(this);
    }

    /**
     * The verdicts on the channel, in words.
     *
     * @param system metric or inch-pound
     * @return three lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return stressCheck().text(system) + "\n" + deflectionCheck().text(system)
                + "\npull on the most loaded rod and anchor: " + SupportText.of(rodLoad(), system) + "\n";
    }
}
