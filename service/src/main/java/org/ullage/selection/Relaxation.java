package org.ullage.selection;

import java.io.Serializable;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.UnitSystem;

/**
 * What would do if one limit alone were given up: the combination that passes it by the least. For the required volume: the largest that
 * can be reached within all limits. For stock and kind, where there is no least: the best one by the job's objectives. Immutable.
 *
 * @param limit the limit
 * @param job the job with all its limits
 * @param wouldDo the combination, or null if giving up this limit alone does not help
 */
public record Relaxation(
        Limit limit, SelectionJob job, @Nullable Combination wouldDo) implements Serializable {

    /**
     * The way out for people.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        if (wouldDo == null) {
            return limit.word() + ": giving up this limit alone does not help";
        }
        return limit.word() + ": " + needed(wouldDo, system) + " (" + wouldDo + ", "
                + wouldDo.nominal().text(system) + ")";
    }

    private String needed(Combination found, UnitSystem system) {
        Limits limits = job.limits();
        return switch (limit) {
            case VESSELS -> "allow " + found.vessels() + " vessels instead of " + limits.vessels();
            case SAME_SIZE -> "allow different sizes together";
            case FOOTPRINT ->
                needs(
                        found.footprint().text(system),
                        Optional.ofNullable(limits.footprint())
                                .map(most -> found.footprint().minus(most).text(system)));
            case HEIGHT ->
                needs(
                        found.tallest().text(system),
                        Optional.ofNullable(limits.height())
                                .map(most -> found.tallest().minus(most).text(system)));
            case LOAD ->
                needs(load(found, system), Optional.ofNullable(limits.load()).map(most -> overload(found, system)));
            case STOCK -> "order " + beyondStock(found);
            case RATING ->
                "would do for a relief setting of at most "
                        + found.items().stream()
                                .map(CatalogueItem::rating)
                                .min(Comparator.naturalOrder())
                                .orElseThrow()
                                .text(system)
                        + ", if the loop allows that";
            case TEMPERATURE ->
                "would do at a place where it is never warmer than "
                        + found.items().stream()
                                .map(CatalogueItem::highestTemperature)
                                .min(Comparator.naturalOrder())
                                .orElseThrow()
                                .text(system);
            case KIND ->
                "allow "
                        + found.items().stream()
                                .map(item -> item.kind().word())
                                .distinct()
                                .collect(Collectors.joining(", "));
            case VOLUME -> "at most " + reached(found, system);
        };
    }

    private static String needs(String all, Optional<String> more) {
        return "needs " + all
                + more.map(text -> ", " + text + " more than there is").orElse("");
    }

    private String load(Combination found, UnitSystem system) {
        return Optional.ofNullable(job.limits().fluid())
                .map(fluid -> found.waterloggedMass(fluid).text(system))
                .orElse("an unknown mass");
    }

    private String overload(Combination found, UnitSystem system) {
        return Optional.ofNullable(job.limits().fluid())
                .flatMap(fluid -> Optional.ofNullable(job.limits().load())
                        .map(most -> found.waterloggedMass(fluid).minus(most).text(system)))
                .orElse("");
    }

    private static String beyondStock(Combination found) {
        return found.lines().stream()
                .filter(line -> line.item().stock() != null
                        && line.count() > line.item().stock())
                .map(line -> line.count() - line.item().stock() + " more of "
                        + line.item().id())
                .collect(Collectors.joining(", "));
    }

    private String reached(Combination found, UnitSystem system) {
        Requirement requirement = job.requirement();
        String nominal = Optional.ofNullable(requirement.nominal())
                .map(most -> found.nominal().text(system) + " nominal of " + most.text(system))
                .orElse("");
        String acceptance = Optional.ofNullable(requirement.acceptance())
                .map(most -> found.acceptance().text(system) + " acceptance of " + most.text(system))
                .orElse("");
        return nominal + (nominal.isEmpty() || acceptance.isEmpty() ? "" : " and ") + acceptance;
    }
}
