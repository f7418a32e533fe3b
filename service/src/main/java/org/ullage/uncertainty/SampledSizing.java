package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ullage.method.Sizing;
import org.ullage.method.SizingInput;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * The distribution of the required volume by drawing. A draw that the method refuses (the charge above the cold pressure, the cold
 * pressure above the final one and so on) has no required volume: it is counted, shown by {@link #text}, and counts as a vessel too small
 * in {@link #volumeFor} and {@link #chanceTooSmall}. Immutable.
 *
 * @param question job, method and spreads
 * @param centre the sizing at the means of the inputs
 * @param result the distribution in m3, with an input for each {@link SizingInput} in order
 */
public record SampledSizing(SizingUncertainty question, Sizing centre, MonteCarloResult result)
        implements Serializable {

    private static final int DIGITS = 4;

    /**
     * The mean of the required volume.
     *
     * @return of the draws with an answer
     */
    public Volume mean() {
        return Volume.ofSi(result.mean());
    }

    /**
     * The standard uncertainty of the required volume.
     *
     * @return standard deviation of the draws with an answer
     */
    public Volume standardUncertainty() {
        return Volume.ofSi(result.standardUncertainty());
    }

    /**
     * The volume at or below which a share of the draws with an answer lies.
     *
     * @param share between 0 and 1
     * @return the quantile
     * @throws OutOfRangeException if the share is not between 0 and 1
     */
    public Volume quantile(double share) {
        return Volume.ofSi(result.quantile(share));
    }

    /**
     * The volume that is enough in a wanted share of all draws, those without an answer counted as never enough.
     *
     * @param confidence between 0 and 1, such as 0.95
     * @return the volume
     * @throws OutOfRangeException if the confidence is not between 0 and 1, or so many draws were refused that no volume reaches it
     */
    public Volume volumeFor(double confidence) {
        double reachable = answeredShare();
        if (Probability.require("confidence", confidence) >= reachable && reachable < 1) {
            throw new OutOfRangeException(
                    "confidence",
                    UncertaintyText.percent(confidence),
                    "below the share of draws with an answer, " + UncertaintyText.percent(reachable),
                    "no vessel is enough for the others ("
                            + String.join(", ", result.refusals().keySet()) + "): change the pressures");
        }
        return quantile(confidence / reachable);
    }

    /**
     * The chance that a vessel is smaller than the method requires, draws without an answer counted as such.
     *
     * @param nominal nominal volume of the vessel
     * @return from 0 to 1
     */
    public double chanceTooSmall(Volume nominal) {
        return 1 - result.shareUpTo(nominal.si()) * answeredShare();
    }

    private double answeredShare() {
        return (double) result.answered() / result.draws();
    }

    /**
     * The part of the variance that goes if an input were known exactly; which matters most.
     *
     * @return by uncertain input, from 0 to 1, to about 0.01
     */
    public Map<SizingInput, Double> shares() {
        Map<SizingInput, Double> shares = new EnumMap<>(SizingInput.class);
        List<Double> all = result.shares();
        question.spreads().keySet().forEach(input -> shares.put(input, all.get(input.place())));
        return Collections.unmodifiableMap(shares);
    }

    /**
     * The dangers of the work, and how far a statement of uncertainty goes.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return UncertaintyText.cautions(centre, result.source());
    }

    /**
     * The answer for people.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return "Required volume " + mean().text(system, DIGITS) + ", standard uncertainty "
                + standardUncertainty().text(system, 2) + ", from " + UncertaintyText.origin(result) + "\n"
                + "with every input at its mean " + centre.requiredVolume().text(system, DIGITS) + "\n"
                + UncertaintyText.refusals(result)
                + UncertaintyText.shares(question, shares(), system);
    }
}
