package org.ullage.selection;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/** The vessels that can be had, in the caller's order. Immutable; make it once and choose from it as often as needed. */
public final class Catalogue implements Serializable {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // the lists of List.copyOf and List.of are serializable
    private final List<CatalogueItem> items;

    private final transient CatalogueNumbers numbers;

    private Catalogue(List<CatalogueItem> items) {
        this.items = items;
        this.numbers = new CatalogueNumbers(items);
    }

    /**
     * Makes a catalogue.
     *
     * @param items at least one, every id once
     * @return the catalogue
     * @throws MissingInputException if there is no item
     * @throws OutOfRangeException if an id stands twice
     */
    public static Catalogue of(List<CatalogueItem> items) {
        if (items.isEmpty()) {
            throw new MissingInputException("catalogue item", "a catalogue", "give at least one vessel");
        }
        Set<String> ids = new HashSet<>();
        for (CatalogueItem item : items) {
            if (!ids.add(item.id())) {
                throw new OutOfRangeException(
                        "id of catalogue item " + item.id(),
                        "\"" + item.id() + "\"",
                        "unique",
                        "rename one of the two");
            }
        }
        return new Catalogue(List.copyOf(items));
    }

    /**
     * Chooses the best vessels for a job.
     *
     * @param job what is required, the limits and the order of objectives
     * @return a {@link Selection}, or a {@link Shortage} if no combination does
     * @throws OutOfRangeException if the catalogue and limits are such that the search would go on for very long
     */
    public SelectionResult choose(SelectionJob job) {
        int[] best = BranchAndBound.best(Problem.of(this, job));
        return best == null ? Shortage.of(this, job) : new Selection(this, job, Combination.of(this, best));
    }

    /**
     * The items.
     *
     * @return in the order they were given
     */
    public List<CatalogueItem> items() {
        return items;
    }

    CatalogueNumbers numbers() {
        return numbers;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Catalogue catalogue && catalogue.items.equals(items);
    }

    @Override
    public int hashCode() {
        return items.hashCode();
    }

    @Override
    public String toString() {
        return "Catalogue of " + items.size() + " items";
    }

    /** A stream brings the items only; the rest is checked and worked out again. */
    private Object readResolve() {
        return of(items);
    }
}
