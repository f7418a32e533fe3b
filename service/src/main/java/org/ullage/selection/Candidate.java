package org.ullage.selection;

import org.ullage.quantity.Density;

/**
 * An item that may be used, as whole numbers.
 *
 * @param item place in the catalogue
 * @param volume what it counts with, see {@link Requirement}
 * @param price in 1e-4 of the currency
 * @param footprint in 1e-12 m2
 * @param emptyMass in 1e-9 kg
 * @param load waterlogged mass in 1e-9 kg, or 0 if the load is not limited
 * @param stock how many can be had, up to the most vessels
 */
record Candidate(int item, long volume, long price, long footprint, long emptyMass, long load, int stock) {

    static Candidate of(Catalogue catalogue, int place, Limits limits, CountedVolume counted) {
        CatalogueNumbers numbers = catalogue.numbers();
        CatalogueItem item = catalogue.items().get(place);
        Density fluid = limits.fluid();
        Integer stock = limits.countStock() ? item.stock() : null;
        return new Candidate(
                place,
                counted.of(numbers.nominal[place], numbers.acceptance[place]),
                numbers.price[place],
                numbers.footprint[place],
                numbers.emptyMass[place],
                limits.load() == null || fluid == null
                        ? 0
                        : Exact.mass(item.waterloggedMass(fluid).si()),
                stock == null ? limits.vessels() : Math.min(stock, limits.vessels()));
    }

    long cost(Objective objective) {
        return switch (objective) {
            case CHEAPEST -> price;
            case FEWEST -> 1;
            case SMALLEST_FOOTPRINT -> footprint;
            case LIGHTEST -> emptyMass;
        };
    }

    /** Whether this one can stand for the other without loss: at least as much volume for at most the cost and the load. */
    boolean replaces(Candidate other) {
        return volume >= other.volume
                && price <= other.price
                && footprint <= other.footprint
                && emptyMass <= other.emptyMass
                && load <= other.load;
    }
}
