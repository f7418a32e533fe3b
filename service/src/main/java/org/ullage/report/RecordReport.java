package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.condition.FluidFindings;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.record.ChargeTrend;
import org.ullage.record.ChecklistItem;
import org.ullage.record.PreSeasonChecklist;
import org.ullage.record.SampleNote;
import org.ullage.record.ServiceBook;
import org.ullage.record.VesselNote;
import org.ullage.record.VisitRecord;

/** The pages of a record: what was set, what visits found, and what to do before the season. */
public final class RecordReport {

    private RecordReport() {}

    /**
     * The record with the trend of each vessel's charge and the check list.
     *
     * @param book the record
     * @param ambient pressure of the air on site
     * @param gasToday gas temperature to which the recorded charge is corrected in the list, or null
     * @param system metric or inch-pound
     * @return the page
     */
    public static Document of(
            ServiceBook book, AbsolutePressure ambient, @Nullable Temperature gasToday, UnitSystem system) {
        Document page = Document.titled("Record of " + book.commissioning().installation())
                .with(new Preformatted(book.text(system)));
        for (VesselNote vessel : book.vesselsNow()) {
            page = page.with(
                    Heading.section("Charge of " + vessel.id()),
                    new Preformatted(ChargeTrend.of(book, vessel.id(), ambient).text(system)));
        }
        return page.with(fluid(book)).with(checklist(PreSeasonChecklist.of(book, ambient, gasToday)));
    }

    /** What the last sample says, if one was ever taken. */
    private static List<Block> fluid(ServiceBook book) {
        List<Block> blocks = new ArrayList<>();
        for (VisitRecord visit : book.visits()) {
            SampleNote taken = visit.sample();
            if (taken != null) {
                blocks.clear();
                blocks.add(Heading.section("Fluid, sample of " + visit.date().date()));
                blocks.addAll(FluidReport.findings(FluidFindings.of(taken.sample())));
            }
        }
        return blocks;
    }

    private static List<Block> checklist(PreSeasonChecklist list) {
        return List.of(Heading.section("Before the season"), checklist(list.items()));
    }

    private static Table checklist(List<ChecklistItem> items) {
        return new Table(
                "What to check, and why",
                List.of(Column.words("do"), Column.words("why"), Column.words("source")),
                items.stream()
                        .map(item ->
                                List.of(item.text(), item.why(), item.source().toString()))
                        .toList());
    }
}
