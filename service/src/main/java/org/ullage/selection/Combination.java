package org.ullage.selection;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * Vessels that stand together, and what they come to in all. Immutable.
 *
 * @param lines the items with their numbers, the one that counts with most volume first
 */
public record Combination(List<Line> lines) implements Serializable {

    /**
     * One item and how many of it.
     *
     * @param item the item
     * @param count one or more
     */
    public record Line(CatalogueItem item, int count) implements Serializable {

        /**
         * Checks the number.
         *
         * @param item the item
         * @param count how many of it
         * @throws OutOfRangeException if it is less than one
         */
        public Line {
            if (count < 1) {
                throw new OutOfRangeException(
                        "number of " + item.id(), String.valueOf(count), "one or more", "leave the item out instead");
            }
        }

        @Override
        public String toString() {
            return count + " x " + item.id();
        }
    }

    /**
     * Copies the lines.
     *
     * @param lines at least one
     * @throws OutOfRangeException if there is none
     */
    public Combination {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new OutOfRangeException("number of vessels", "0", "one or more", "take at least one vessel");
        }
    }

    static Combination of(Catalogue catalogue, int[] places) {
        List<CatalogueItem> items = new ArrayList<>();
        for (int place : places) {
            items.add(catalogue.items().get(place));
        }
        return of(items);
    }

    static Combination of(List<CatalogueItem> items) {
        Map<CatalogueItem, Integer> counts = new LinkedHashMap<>();
        items.forEach(item -> counts.merge(item, 1, Integer::sum));
        return new Combination(counts.entrySet().stream()
                .map(entry -> new Line(entry.getKey(), entry.getValue()))
                .toList());
    }

    /** Every vessel by itself, in the order of the lines. */
    List<CatalogueItem> items() {
        return lines.stream()
                .flatMap(line -> Collections.nCopies(line.count(), line.item()).stream())
                .toList();
    }

    /**
     * How many vessels there are.
     *
     * @return one or more
     */
    public int vessels() {
        return lines.stream().mapToInt(Line::count).sum();
    }

    /**
     * Nominal volume of all of them.
     *
     * @return the sum
     */
    public Volume nominal() {
        return each(CatalogueItem::nominal).reduce(Volume.litres(0), Volume::plus);
    }

    /**
     * Acceptance limits of all of them; a limit that is not known counts with the nominal volume.
     *
     * @return the sum
     */
    public Volume acceptance() {
        return each(CatalogueItem::acceptance).reduce(Volume.litres(0), Volume::plus);
    }

    /**
     * Price of all of them.
     *
     * @return the sum, in the caller's currency
     */
    public BigDecimal price() {
        return each(CatalogueItem::price).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * Floor area of all of them.
     *
     * @return the sum
     */
    public Area footprint() {
        return each(CatalogueItem::footprint).reduce(Area::plus).orElseThrow();
    }

    /**
     * Mass of all of them without water.
     *
     * @return the sum
     */
    public Mass emptyMass() {
        return each(CatalogueItem::emptyMass).reduce(Mass.kilograms(0), Mass::plus);
    }

    /**
     * Mass of all of them with their whole nominal volume full of fluid.
     *
     * @param fluid density of the fluid, cold
     * @return the sum
     */
    public Mass waterloggedMass(Density fluid) {
        return each(item -> item.waterloggedMass(fluid)).reduce(Mass.kilograms(0), Mass::plus);
    }

    /**
     * Height of the tallest.
     *
     * @return the largest height
     */
    public Length tallest() {
        return each(CatalogueItem::height)
                .reduce((one, other) -> one.si() >= other.si() ? one : other)
                .orElseThrow();
    }

    private <T> Stream<T> each(Function<CatalogueItem, T> value) {
        return items().stream().map(value);
    }

    /**
     * The vessels and what they come to.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return this + ": " + nominal().text(system) + ", price " + price().toPlainString() + ", footprint "
                + footprint().text(system) + ", empty " + emptyMass().text(system);
    }

    @Override
    public String toString() {
        return lines.stream().map(Line::toString).collect(Collectors.joining(" + "));
    }
}
