package org.ullage.examples.demo;

import org.ullage.method.Sizing;

/** What came out. */
record AnswerSection(Sizing sizing) implements Section {

    @Override
    public void print(Page page) {
        page.heading("The answer, by " + sizing.method().title());
        page.valueHead();
        page.value("REQUIRED VOLUME of the vessel, at least", sizing.requiredVolume());
        page.words("Decided by", sizing.governing().toString());
        page.value("Net expansion of the loop", sizing.expansionVolume());
        page.value("Water the vessel must accept", sizing.acceptanceVolume());
        page.value("Pre-charge (empty of water, at 20 degC)", sizing.preCharge());
        page.value("Pressure at the vessel, cold", sizing.coldPressure());
        page.value("Pressure at the vessel, hot", sizing.finalPressure());
        page.paragraph("Pressures are gauge. Take the next larger vessel that is made.");
    }
}
