package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.ullage.method.Sizing;
import org.ullage.method.SizingInput;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * The required volume with its standard uncertainty by the law of propagation. Immutable.
 *
 * @param question job, method and spreads
 * @param centre the sizing at the means of the inputs
 * @param propagation the calculation in m3, with an input for each {@link SizingInput} in order
 */
public record LinearSizing(SizingUncertainty question, Sizing centre, LinearUncertainty propagation)
        implements Serializable {

    private static final int DIGITS = 2;

    /**
     * Checks that the calculation has every input.
     *
     * @param question job, method and spreads
     * @param centre the sizing at the means of the inputs
     * @param propagation the calculation in m3
     * @throws OutOfRangeException if the calculation has not one contribution for each {@link SizingInput}
     */
    public LinearSizing {
        int inputs = SizingInput.values().length;
        int contributions = propagation.contributions().size();
        if (contributions != inputs) {
            throw new OutOfRangeException(
                    "number of contributions",
                    Integer.toString(contributions),
                    inputs + ", one for each input",
                    "take it from SizingUncertainty.linear");
        }
    }

    /**
     * The required volume at the means of the inputs.
     *
     * @return the volume
     */
    public Volume requiredVolume() {
        return centre.requiredVolume();
    }

    /**
     * The combined standard uncertainty of the required volume.
     *
     * @return zero or more
     */
    public Volume standardUncertainty() {
        return Volume.ofSi(propagation.standardUncertainty());
    }

    /**
     * The expanded uncertainty.
     *
     * @param coverageFactor k, above zero; usually 2
     * @return k u
     * @throws OutOfRangeException if the factor is not above zero and finite
     */
    public Volume expanded(double coverageFactor) {
        return Volume.ofSi(propagation.expanded(coverageFactor));
    }

    /**
     * The volume that is enough with a wanted confidence, if the required volume is about normal; {@link SampledSizing#volumeFor} does
     * without that condition.
     *
     * @param confidence between 0 and 1, such as 0.95
     * @return required volume + z u
     * @throws OutOfRangeException if the confidence is not between 0 and 1
     */
    public Volume volumeFor(double confidence) {
        double z = new NormalDistribution(0, 1)
                .inverseCumulativeProbability(Probability.require("confidence", confidence));
        return Volume.ofSi(propagation.value() + z * propagation.standardUncertainty());
    }

    /**
     * What each uncertain input moves in the required volume when it rises by its standard uncertainty.
     *
     * @return by input
     */
    public Map<SizingInput, Volume> contributions() {
        Map<SizingInput, Volume> volumes = new EnumMap<>(SizingInput.class);
        question.spreads()
                .keySet()
                .forEach(input ->
                        volumes.put(input, Volume.ofSi(contribution(input).uncertainty())));
        return Collections.unmodifiableMap(volumes);
    }

    /**
     * The part of the variance that each uncertain input brings; which matters most.
     *
     * @return by input; together 1, or 0 if nothing is uncertain
     */
    public Map<SizingInput, Double> shares() {
        Map<SizingInput, Double> shares = new EnumMap<>(SizingInput.class);
        question.spreads()
                .keySet()
                .forEach(input -> shares.put(input, contribution(input).share()));
        return Collections.unmodifiableMap(shares);
    }

    private Contribution contribution(SizingInput input) {
        return propagation.contributions().get(input.place());
    }

    /**
     * The dangers of the work, and how far a statement of uncertainty goes.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return UncertaintyText.cautions(centre, propagation.source());
    }

    /**
     * The answer for people.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return "Required volume " + requiredVolume().text(system) + ", standard uncertainty "
                + standardUncertainty().text(system, DIGITS) + ", by the law of propagation\n"
                + UncertaintyText.shares(question, shares(), system);
    }
}
