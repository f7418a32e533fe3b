package org.ullage.comparison;

import java.io.Serializable;
import java.util.List;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * Why two methods give different vessels for one job: from the first to the second one convention at a time, with what each is worth.
 * The changes add up to the difference of the two answers. Immutable.
 *
 * <p>What a convention is worth depends on the order in which they are exchanged. {@link #between} takes the order of {@link
 * Convention}; {@link ConventionShares} gives the average over all orders.
 *
 * @param first the answer to start from
 * @param second the answer to arrive at
 * @param changes the changes in order; conventions that are the same in both are left out
 */
public record Explanation(Sizing first, Sizing second, List<Change> changes) implements Serializable {

    /**
     * One step of the way.
     *
     * @param conventions the conventions exchanged in this step: one, or several where one alone would give no valid sizing
     * @param after required volume after the exchange
     * @param difference how much the exchange added to the vessel, negative if it made it smaller
     */
    public record Change(List<Convention> conventions, Volume after, Volume difference) implements Serializable {

        /**
         * Copies the conventions.
         *
         * @param conventions the conventions exchanged
         * @param after required volume after the exchange
         * @param difference how much it added
         */
        public Change {
            conventions = List.copyOf(conventions);
        }
    }

    /**
     * Copies the changes.
     *
     * @param first the answer to start from
     * @param second the answer to arrive at
     * @param changes the changes in order
     */
    public Explanation {
        changes = List.copyOf(changes);
    }

    /**
     * Explains the difference between two methods.
     *
     * @param job what is to be sized
     * @param first the method to start from
     * @param second the method to arrive at
     * @return the way between them
     * @throws OutOfRangeException if one of the two methods refuses the job
     * @throws MissingInputException if one of the two methods lacks an input
     */
    public static Explanation between(SizingJob job, Method first, Method second) {
        return new ConventionWalk(job, first, second).explanation();
    }

    /**
     * Difference of the two answers.
     *
     * @return the second required volume less the first, the sum of all changes
     */
    public Volume difference() {
        return second.requiredVolume().minus(first.requiredVolume());
    }

    /**
     * The explanation as text, a convention a line.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        StringBuilder text = new StringBuilder();
        text.append(first.method().title())
                .append(": ")
                .append(first.requiredVolume().text(system))
                .append('\n');
        for (Change change : changes) {
            text.append("  ").append(change.difference().signedText(system)).append("  -> ");
            text.append(change.after().text(system)).append('\n');
            for (Convention convention : change.conventions()) {
                text.append("      ").append(convention).append(": ");
                text.append(convention.words(first))
                        .append(" -> ")
                        .append(convention.words(second))
                        .append('\n');
            }
        }
        text.append(second.method().title())
                .append(": ")
                .append(second.requiredVolume().text(system));
        return text.append(" (")
                .append(difference().signedText(system))
                .append(" in all)\n")
                .toString();
    }
}
