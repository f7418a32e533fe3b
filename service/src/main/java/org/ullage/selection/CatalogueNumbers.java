package org.ullage.selection;

import java.util.List;

/** The items of a catalogue as whole numbers, worked out once. */
final class CatalogueNumbers {

    final long[] nominal;
    final long[] acceptance;
    final long[] price;
    final long[] footprint;
    final long[] emptyMass;

    CatalogueNumbers(List<CatalogueItem> items) {
        nominal = items.stream()
                .mapToLong(item -> Exact.volume(item.nominal().si()))
                .toArray();
        acceptance = items.stream()
                .mapToLong(item -> Exact.volume(item.acceptance().si()))
                .toArray();
        price = items.stream().mapToLong(item -> Exact.price(item.price())).toArray();
        footprint = items.stream()
                .mapToLong(item -> Exact.area(item.footprint().si()))
                .toArray();
        emptyMass = items.stream()
                .mapToLong(item -> Exact.mass(item.emptyMass().si()))
                .toArray();
    }
}
