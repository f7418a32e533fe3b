package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.GasLeft;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.diagnosis.RankedHypothesis;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Workings;

/** The page of a diagnosis. */
public final class DiagnosisReport {

    /** What is left of the belief is not worth a line. */
    private static final int SHOWN = 6;

    private DiagnosisReport() {}

    /**
     * What the readings say, how sure that is, and what to measure next.
     *
     * @param diagnosis the diagnosis
     * @param chart the readings on the curve of a sound vessel
     * @param system metric or inch-pound
     * @return the page
     */
    public static Document of(Diagnosis diagnosis, Chart chart, UnitSystem system) {
        return Document.titled("Is this vessel still good?")
                .with(
                        Paragraph.of(diagnosis.verdict()),
                        Paragraph.of("Next: " + diagnosis.nextStep() + "."),
                        chart,
                        Heading.section("What was read"),
                        readings(diagnosis, system))
                .with(gas(diagnosis, system))
                .with(
                        Heading.section("What it may be"),
                        ranking(diagnosis),
                        Paragraph.of("Likelihoods are judgements and no frequencies that were measured: "
                                + Diagnosis.judgementSource()),
                        Heading.section("Cautions"),
                        new CautionList(diagnosis.cautions()));
    }

    private static Table readings(Diagnosis diagnosis, UnitSystem system) {
        return Table.of(
                        "Readings at the vessel, with what instruments may be off",
                        Column.words("reading"),
                        Column.words("pressure"),
                        Column.words("temperature"))
                .row(row("cold", diagnosis.evidence().cold(), system))
                .row(row("hot", diagnosis.evidence().hot(), system));
    }

    private static String[] row(String name, GaugeReading read, UnitSystem system) {
        return new String[] {
            name,
            read.reading().pressure().text(system) + " +- "
                    + read.pressureError().text(system),
            read.reading().temperature().text(system) + " +- "
                    + read.temperatureError().text(system)
        };
    }

    private static List<Block> gas(Diagnosis diagnosis, UnitSystem system) {
        GasLeft left = diagnosis.gasLeft();
        if (left == null) {
            return List.of(Paragraph.of("The readings do not give the gas that is left."));
        }
        return List.of(
                Paragraph.of(left.text(system)),
                Preformatted.of(new Workings("Gas left, from two readings", List.of(left.step())), system));
    }

    private static Table ranking(Diagnosis diagnosis) {
        List<List<String>> rows = new ArrayList<>();
        for (RankedHypothesis ranked : diagnosis.ranking().subList(0, SHOWN)) {
            rows.add(List.of(
                    ranked.hypothesis().word(),
                    ranked.percent(),
                    String.join("; ", ranked.supports()),
                    String.join("; ", ranked.contradicts()),
                    ranked.hypothesis().remedy()));
        }
        return new Table(
                "Hypotheses, the likeliest first",
                List.of(
                        Column.words("hypothesis"),
                        Column.numbers("belief"),
                        Column.words("for"),
                        Column.words("against"),
                        Column.words("what it calls for")),
                rows);
    }
}
