package org.ullage.report;

import org.ullage.method.Sizing;
import org.ullage.quantity.UnitSystem;

/** The page to keep of a sizing. */
public final class SizingReport {

    private SizingReport() {}

    /**
     * The job, the answer, warnings, cautions and workings.
     *
     * @param sizing the answer
     * @param system metric or inch-pound
     * @return the page
     */
    public static Document of(Sizing sizing, UnitSystem system) {
        return Document.titled("Expansion vessel by " + sizing.method().title())
                .with(
                        Heading.section("The answer"),
                        answer(sizing, system),
                        Paragraph.of("Pressures are gauge. Take the next larger vessel that is made."),
                        Heading.section("The job"),
                        JobTable.of(sizing.job(), system),
                        Heading.section("Warnings about this answer"),
                        new CautionList(sizing.warnings()),
                        Heading.section("Cautions for the work"),
                        new CautionList(sizing.cautions()),
                        Heading.section("Workings"),
                        Preformatted.of(sizing.workings(), system));
    }

    private static Table answer(Sizing sizing, UnitSystem system) {
        return Table.of(
                        "What the vessel must be, and what it follows from",
                        Column.words("of the vessel and the loop"),
                        Column.words("value"))
                .row(
                        "required volume of the vessel, at least",
                        sizing.requiredVolume().text(system))
                .row("decided by", sizing.governing().toString())
                .row("net expansion of the loop", sizing.expansionVolume().text(system))
                .row("reserve", sizing.reserveVolume().text(system))
                .row("water the vessel must accept", sizing.acceptanceVolume().text(system))
                .row(
                        "gas charge, empty of water, at 20 degC",
                        sizing.preCharge().text(system))
                .row("pressure at the vessel, cold", sizing.coldPressure().text(system))
                .row("pressure at the vessel, hot", sizing.finalPressure().text(system))
                .row("pressure of the air", sizing.atmosphere().text(system));
    }
}
