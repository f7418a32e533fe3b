package org.ullage.examples.demo;

import org.ullage.support.Bracket;
import org.ullage.support.VesselRemoval;
import org.ullage.support.VesselWeight;

/** What the bracket must hold when the vessel is full, and how it comes off the wall. */
record SupportSection(VesselWeight weight, Bracket bracket, VesselRemoval removal) implements Section {

    @Override
    public void print(Page page) {
        page.heading("Hung on the wall, each vessel");
        page.valueHead();
        page.value("Weight empty", weight.empty());
        page.value("WEIGHT WATERLOGGED", weight.waterlogged());
        page.value("Support for twice that, by UMC 1004.1", weight.twiceFilled());
        page.value("Moment on the wall", bracket.moment());
        page.value("Pull on each top anchor", bracket.tensionPerAnchor());
        page.value("of an allowable", bracket.strength().tension());
        page.value("Shear on each anchor", bracket.shearPerAnchor());
        page.value("of an allowable", bracket.strength().shear());
        page.words("Bracket and anchors", bracket.passes() ? "pass" : "REFUSED");
        page.value("Limit for one person, this lift", removal.limit());
        page.words("Taking it off", removal.advice().toString());
        bracket.cautions().forEach(caution -> page.bullet(caution.toString()));
    }
}
