package org.ullage.method;

import java.io.Serializable;
import org.ullage.loop.Contents;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * The vessel for contents that are known as a range only: the answers for the low, typical and high contents. Immutable.
 *
 * @param low the answer for the lowest contents
 * @param typical the answer for the typical contents
 * @param high the answer for the highest contents
 */
public record VesselRange(Sizing low, Sizing typical, Sizing high) implements Serializable {

    /**
     * Sizes the vessel for the whole range.
     *
     * @param job what is to be sized; its own contents are replaced
     * @param method the method
     * @param contents low, typical and high
     * @return the three answers
     * @throws OutOfRangeException if the method refuses the job
     * @throws MissingInputException if the method lacks an input
     */
    public static VesselRange of(SizingJob job, Method method, Contents contents) {
        return new VesselRange(
                size(job, method, contents.low()),
                size(job, method, contents.typical()),
                size(job, method, contents.high()));
    }

    private static Sizing size(SizingJob job, Method method, Volume contents) {
        return method.size(job.with(job.loop().holding(contents)));
    }

    /**
     * The answer to take: the one for the highest contents, because a vessel that is too large costs money and one that is too small
     * lifts the relief valve.
     *
     * @return the answer for the high end
     */
    public Sizing recommended() {
        return high;
    }

    /**
     * The range in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "required volume " + low.requiredVolume().text(system) + " to "
                + high.requiredVolume().text(system) + ", typically "
                + typical.requiredVolume().text(system) + "; take "
                + recommended().requiredVolume().text(system)
                + ": a vessel that is too large only costs money, one that is too small lifts the valve";
    }
}
