package org.ullage.selection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.Density;
import org.ullage.quantity.Volume;

/** Every combination there is, by decimal arithmetic on the items: slow, and nothing of it is shared with the search. */
final class Enumeration {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private final SelectionJob job;
    private final List<CatalogueItem> items;
    private final List<int[]> feasible = new ArrayList<>();

    Enumeration(Catalogue catalogue, SelectionJob job) {
        this.job = job;
        this.items = catalogue.items();
        extend(new int[items.size()], 0, 0);
    }

    private void extend(int[] counts, int place, int vessels) {
        if (place == items.size()) {
            if (vessels > 0 && isAllowed(counts) && isEnough(counts)) {
                feasible.add(counts.clone());
            }
            return;
        }
        Integer stock = items.get(place).stock();
        int most = Math.min(job.limits().vessels() - vessels, stock == null ? 99 : stock);
        for (int count = 0; count <= most; count++) {
            counts[place] = count;
            extend(counts, place + 1, vessels + count);
        }
        counts[place] = 0;
    }

    private boolean isAllowed(int[] counts) {
        Limits limits = job.limits();
        long different = Arrays.stream(counts).filter(count -> count > 0).count();
        return (limits.mixed() || different == 1)
                && (limits.footprint() == null
                        || sum(counts, item -> decimal(item.footprint().si()))
                                        .compareTo(decimal(limits.footprint().si()))
                                <= 0)
                && (limits.load() == null
                        || sum(counts, item -> waterlogged(item, limits.fluid()))
                                        .compareTo(decimal(limits.load().si()))
                                <= 0);
    }

    private static BigDecimal waterlogged(CatalogueItem item, @Nullable Density fluid) {
        return decimal(item.emptyMass().si())
                .add(decimal(item.nominal().si()).multiply(fluid == null ? THOUSAND : decimal(fluid.si())));
    }

    /** The rule itself: at the share to which the required vessel fills, the vessels together take the water in. */
    private boolean isEnough(int[] counts) {
        Volume nominal = job.requirement().nominal();
        Volume acceptance = job.requirement().acceptance();
        if (nominal == null || acceptance == null) {
            return nominal == null
                    ? sum(counts, item -> decimal(item.acceptance().si())).compareTo(required(acceptance)) >= 0
                    : sum(counts, item -> decimal(item.nominal().si())).compareTo(required(nominal)) >= 0;
        }
        BigDecimal volume = required(nominal);
        BigDecimal water = required(acceptance);
        // both sides times the required nominal volume, so that nothing is divided
        return sum(
                                counts,
                                item -> decimal(item.nominal().si())
                                        .multiply(water)
                                        .min(decimal(item.acceptance().si()).multiply(volume)))
                        .compareTo(water.multiply(volume))
                >= 0;
    }

    /** A cubic millimetre less is enough. */
    private static BigDecimal required(Volume volume) {
        return decimal(volume.si()).setScale(9, RoundingMode.FLOOR);
    }

    private static BigDecimal decimal(double si) {
        return BigDecimal.valueOf(si);
    }

    private BigDecimal sum(int[] counts, Function<CatalogueItem, BigDecimal> value) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < counts.length; i++) {
            sum = sum.add(value.apply(items.get(i)).multiply(BigDecimal.valueOf(counts[i])));
        }
        return sum;
    }

    BigDecimal cost(int[] counts, Objective objective) {
        return switch (objective) {
            case CHEAPEST -> sum(counts, CatalogueItem::price);
            case FEWEST -> sum(counts, item -> BigDecimal.ONE);
            case SMALLEST_FOOTPRINT ->
                sum(counts, item -> decimal(item.footprint().si()));
            case LIGHTEST -> sum(counts, item -> decimal(item.emptyMass().si()));
        };
    }

    List<BigDecimal> costs(int[] counts) {
        return job.order().stream().map(objective -> cost(counts, objective)).toList();
    }

    List<BigDecimal> costs(Combination combination) {
        int[] counts = new int[items.size()];
        combination.lines().forEach(line -> counts[items.indexOf(line.item())] += line.count());
        return costs(counts);
    }

    /** The feasible combinations from which no vessel can be left out, best first; equals in no particular order. */
    List<int[]> ranked() {
        return feasible.stream()
                .filter(this::hasNothingSuperfluous)
                .sorted(Comparator.comparing(this::costs, Enumeration::compare))
                .toList();
    }

    private boolean hasNothingSuperfluous(int[] counts) {
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                int[] less = counts.clone();
                less[i]--;
                if (isEnough(less)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int compare(List<BigDecimal> one, List<BigDecimal> other) {
        for (int i = 0; i < one.size(); i++) {
            int comparison = one.get(i).compareTo(other.get(i));
            if (comparison != 0) {
                return comparison;
            }
        }
        return 0;
    }

    /** Price, footprint and number of the combinations that none beats in all three. */
    List<List<BigDecimal>> front() {
        List<List<BigDecimal>> points = feasible.stream()
                .map(counts -> List.of(
                        cost(counts, Objective.CHEAPEST),
                        cost(counts, Objective.SMALLEST_FOOTPRINT).stripTrailingZeros(),
                        cost(counts, Objective.FEWEST)))
                .distinct()
                .toList();
        return points.stream()
                .filter(point -> points.stream().noneMatch(other -> beats(other, point)))
                .toList();
    }

    private static boolean beats(List<BigDecimal> other, List<BigDecimal> point) {
        boolean better = false;
        for (int i = 0; i < point.size(); i++) {
            int comparison = other.get(i).compareTo(point.get(i));
            if (comparison > 0) {
                return false;
            }
            better |= comparison < 0;
        }
        return better;
    }
}
