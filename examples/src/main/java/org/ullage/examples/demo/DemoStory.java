package org.ullage.examples.demo;

import java.util.Comparator;
import org.ullage.charge.ChargePlan;
import org.ullage.method.Sizing;
import org.ullage.published.Methods;
import org.ullage.record.ServiceBook;
import org.ullage.selection.CatalogueItem;
import org.ullage.selection.Combination;
import org.ullage.selection.Selection;
import org.ullage.support.ContainedFluid;
import org.ullage.support.ShellMass;
import org.ullage.support.VesselWeight;

/**
 * The invented building from its job to its record.
 *
 * @param sizing the vessel it needs
 * @param bought the vessels that were chosen
 * @param plan the charge and fill of the day
 * @param largest the largest of the vessels
 * @param weight what that one weighs
 * @param book its record
 */
record DemoStory(
        Sizing sizing,
        Selection bought,
        ChargePlan plan,
        CatalogueItem largest,
        VesselWeight weight,
        ServiceBook book) {

    static DemoStory told() {
        Sizing sizing = DemoBuilding.ready().by(Methods.ASHRAE).size();
        Selection bought =
                DemoCatalogue.VESSELS.choose(DemoBuilding.choice(sizing)).orRefuse();
        ChargePlan plan = DemoBuilding.charge(sizing, bought.chosen().nominal());
        CatalogueItem largest = bought.chosen().lines().stream()
                .map(Combination.Line::item)
                .max(Comparator.comparing(CatalogueItem::nominal))
                .orElseThrow();
        VesselWeight weight =
                new VesselWeight(largest.nominal(), ShellMass.fromPlate(largest.emptyMass()), ContainedFluid.WATER);
        return new DemoStory(sizing, bought, plan, largest, weight, DemoRecord.of(sizing, largest, weight, plan));
    }
}
