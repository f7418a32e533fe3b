package org.ullage.selection;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/** The answer to a {@link SelectionJob}: vessels, or what stands in the way. Immutable. */
public sealed interface SelectionResult extends Serializable permits Selection, Shortage {

    /**
     * What was to be chosen.
     *
     * @return the job as it was given
     */
    SelectionJob job();

    /**
     * What there was to choose from.
     *
     * @return the catalogue as it was given
     */
    Catalogue catalogue();

    /**
     * The items the job cannot use, whatever the others are.
     *
     * @return with the reasons, in the order of the catalogue
     */
    default List<Excluded> excluded() {
        return Eligibility.excluded(catalogue(), job());
    }

    /**
     * The answer for people.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    String text(UnitSystem system);

    /**
     * The selection, for callers who take a shortage for a failure.
     *
     * @return the selection
     * @throws OutOfRangeException if no combination does; it says what stands in the way
     */
    Selection orRefuse();
}
