package org.ullage.selection;

import java.util.List;
import java.util.stream.Collectors;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * No combination of the catalogue does the job: what stands in the way, and by how much. Immutable.
 *
 * @param catalogue what there was to choose from
 * @param job what was to be chosen
 * @param relaxations for each limit that is set, what giving it up alone would need; the required volume last
 */
public record Shortage(Catalogue catalogue, SelectionJob job, List<Relaxation> relaxations) implements SelectionResult {

    /**
     * Copies the list.
     *
     * @param catalogue what there was to choose from
     * @param job what was to be chosen
     * @param relaxations what would help
     */
    public Shortage {
        relaxations = List.copyOf(relaxations);
    }

    static Shortage of(Catalogue catalogue, SelectionJob job) {
        return new Shortage(catalogue, job, new ShortageFinder(catalogue, job).relaxations());
    }

    @Override
    public Selection orRefuse() {
        throw new OutOfRangeException(
                "selection",
                "of at most " + job.limits().vessels() + " vessels from "
                        + catalogue.items().size() + " items",
                "possible within every limit",
                lines(UnitSystem.SI, "; "));
    }

    private String lines(UnitSystem system, String between) {
        return relaxations.stream().map(relaxation -> relaxation.text(system)).collect(Collectors.joining(between));
    }

    @Override
    public String text(UnitSystem system) {
        return "no combination does within every limit; each of these alone would be needed, or is what can be reached:\n"
                + lines(system, "\n") + "\n" + SelectionText.excluded(this);
    }
}
