package org.ullage.charge;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * Whether one dial can both end where a rule wants it and have the reading in its middle half. Often none can: for a 30 psi boiler the
 * scale must end between 45 and 90 psi, and 12 psi stands at 20 % of a 0 to 60 psi dial. Then the charge needs a gauge of its own.
 * Immutable.
 *
 * @param rule where the scale must end
 * @param rating what the rule's multiples are of
 * @param reading what is to be read
 * @param allowed the ranges that the rule allows
 * @param readable of those, the ranges with the reading in their middle half
 */
public record GaugeConflict(
        GaugeScaleRule rule,
        GaugePressure rating,
        GaugePressure reading,
        List<GaugeRange> allowed,
        List<GaugeRange> readable)
        implements Serializable {

    /**
     * Copies the ranges.
     *
     * @param rule where the scale must end
     * @param rating what the rule's multiples are of
     * @param reading what is to be read
     * @param allowed the ranges that the rule allows
     * @param readable the ranges that also read well
     */
    public GaugeConflict {
        allowed = List.copyOf(allowed);
        readable = List.copyOf(readable);
    }

    /**
     * Looks through ranges.
     *
     * @param rule where the scale must end
     * @param rating what the rule's multiples are of, above zero
     * @param reading what is to be read
     * @param ranges that can be had, such as {@link GaugeRanges#PSI_DIALS}
     * @return what was found
     * @throws OutOfRangeException if the rating is not above zero
     */
    public static GaugeConflict of(
            GaugeScaleRule rule, GaugePressure rating, GaugePressure reading, List<GaugeRange> ranges) {
        List<GaugeRange> allowed =
                ranges.stream().filter(range -> rule.allows(range, rating)).toList();
        List<GaugeRange> readable = allowed.stream()
                .filter(range -> range.covers(reading) && range.inMiddleHalf(reading))
                .toList();
        return new GaugeConflict(rule, rating, reading, allowed, readable);
    }

    /**
     * Whether the two rules cannot be met together.
     *
     * @return true if no range meets both
     */
    public boolean isConflict() {
        return readable.isEmpty();
    }

    /**
     * What was found, in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        String asked = rule.words() + " of " + rating.text(system) + "; ";
        String source = " " + rule.least().source();
        if (!isConflict()) {
            return asked + reading.text(system) + " stands in the middle half of "
                    + readable.get(0).text(system) + source;
        }
        String which = allowed.isEmpty() ? "no range does so" : allowed.get(0).text(system) + " does so";
        return asked + which + ", and " + reading.text(system)
                + " stands in the middle half of none that does: read the charge with a gauge of its own" + source;
    }
}
