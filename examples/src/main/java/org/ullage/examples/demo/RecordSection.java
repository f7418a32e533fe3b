package org.ullage.examples.demo;

import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.record.ChargeTrend;
import org.ullage.record.ServiceBook;
import org.ullage.record.TagNote;

/** What the next person finds: the tag beside the vessel, and what the charge has done since. */
record RecordSection(ServiceBook book, AbsolutePressure air) implements Section {

    @Override
    public void print(Page page) {
        page.heading("The tag beside the vessel");
        TagNote.of(book, DemoRecord.VESSEL).text(UnitSystem.SI).lines().forEach(page::line);
        page.heading("Its charge over the years (invented visits)");
        ChargeTrend.of(book, DemoRecord.VESSEL, air).text(UnitSystem.SI).lines().forEach(page::line);
    }
}
