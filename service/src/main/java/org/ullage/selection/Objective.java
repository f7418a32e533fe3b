package org.ullage.selection;

import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.UnitSystem;

/** What a selection is to have least of. Several are ranked: a later one decides only where the earlier ones are equal. */
public enum Objective {
    /** Lowest total price. */
    CHEAPEST("price") {
        @Override
        long exact(CatalogueItem item) {
            return Exact.price(item.price());
        }

        @Override
        String amount(Combination combination, UnitSystem system) {
            return combination.price().toPlainString();
        }

        @Override
        String excess(Combination more, Combination less, UnitSystem system) {
            return more.price().subtract(less.price()).toPlainString();
        }
    },
    /** Fewest vessels. */
    FEWEST("vessels") {
        @Override
        long exact(CatalogueItem item) {
            return 1;
        }

        @Override
        String amount(Combination combination, UnitSystem system) {
            return String.valueOf(combination.vessels());
        }

        @Override
        String excess(Combination more, Combination less, UnitSystem system) {
            return String.valueOf(more.vessels() - less.vessels());
        }
    },
    /** Least floor area in all. */
    SMALLEST_FOOTPRINT("footprint") {
        @Override
        long exact(CatalogueItem item) {
            return Exact.area(item.footprint().si());
        }

        @Override
        String amount(Combination combination, UnitSystem system) {
            return combination.footprint().text(system);
        }

        @Override
        String excess(Combination more, Combination less, UnitSystem system) {
            return more.footprint().minus(less.footprint()).text(system);
        }
    },
    /** Least empty mass in all: what has to be carried in. */
    LIGHTEST("empty mass") {
        @Override
        long exact(CatalogueItem item) {
            return Exact.mass(item.emptyMass().si());
        }

        @Override
        String amount(Combination combination, UnitSystem system) {
            return combination.emptyMass().text(system);
        }

        @Override
        String excess(Combination more, Combination less, UnitSystem system) {
            return more.emptyMass().minus(less.emptyMass()).text(system);
        }
    };

    private final String word;

    Objective(String word) {
        this.word = word;
    }

    /**
     * What is to be least.
     *
     * @return such as {@code footprint}
     */
    public String word() {
        return word;
    }

    /** How much of it a combination has, as an exact number. */
    final long exact(Combination combination) {
        return combination.items().stream().mapToLong(this::exact).sum();
    }

    /** How much of it one item has, as an exact number. */
    abstract long exact(CatalogueItem item);

    /** How much of it a combination has, for people. */
    abstract String amount(Combination combination, UnitSystem system);

    /** How much more of it one combination has than another, for people. */
    abstract String excess(Combination more, Combination less, UnitSystem system);

    /** The order with the objectives that were not named behind those that were, so that a tie is broken sensibly. */
    static List<Objective> completed(List<Objective> named) {
        List<Objective> order = new ArrayList<>(named);
        for (Objective objective : values()) {
            if (!order.contains(objective)) {
                order.add(objective);
            }
        }
        return List.copyOf(order);
    }
}
