package org.ullage.examples.records;

import java.io.InputStream;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.file.PageFile;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.record.ChargeTrend;
import org.ullage.record.PreSeasonChecklist;
import org.ullage.record.ServiceBook;
import org.ullage.record.TagNote;
import org.ullage.record.VesselNote;
import org.ullage.record.VisitRecord;
import org.ullage.report.RecordReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code record}. */
@Command(
        name = "record",
        description = {
            "Reads the record of an installation from a JSON file and prints it; or the tags for its vessels, the trend of"
                    + " their charge, the check list before the season; or adds a visit and prints the longer record as JSON."
        })
public final class RecordCommand extends AnswerCommand {

    private final InputStream in;

    @Parameters(paramLabel = "FILE", arity = "1", description = "the record, JSON; - reads standard input")
    private String file = "";

    @Option(names = "--tag", description = "print the tag to hang beside each vessel")
    private boolean tag;

    @Option(names = "--trend", description = "print the trend of each charge")
    private boolean trend;

    @Option(names = "--check-list", description = "print the check list before the season")
    private boolean checkList;

    @Option(
            names = "--gas",
            paramLabel = "TEMPERATURE",
            description = "temperature of the gas today, to which the check list corrects the recorded charge")
    private @Nullable Temperature gas;

    @Option(names = "--altitude", paramLabel = "HEIGHT", description = "height of the site; sea level if not given")
    private Length altitude = Length.metres(0);

    @Option(names = "--add", paramLabel = "VISIT", description = "add the visit of this JSON file and print the record")
    private @Nullable String visit;

    @Option(names = "--html", paramLabel = "FILE", description = "write the record as a page to this file")
    private @Nullable String html;

    @Option(names = "--units", paramLabel = "SYSTEM", description = "print in SI or IP; SI if not given")
    private UnitSystem units = UnitSystem.SI;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public RecordCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        ServiceBook book = Json.read(new InputFile(file, in), ServiceBook.class);
        if (visit != null) {
            VisitRecord added = Json.read(new InputFile(visit, in), VisitRecord.class);
            out.print(Json.write(book.withVisit(added)));
            return;
        }
        AbsolutePressure air = StandardAtmosphere.at(altitude);
        if (html != null) {
            PageFile.write(html, RecordReport.of(book, air, gas, units).html());
        }
        if (tag) {
            book.vesselsNow()
                    .forEach(vessel -> out.println(TagNote.of(book, vessel.id()).text(units)));
        }
        if (trend) {
            for (VesselNote vessel : book.vesselsNow()) {
                out.print(ChargeTrend.of(book, vessel.id(), air).text(units));
            }
        }
        if (checkList) {
            out.print(PreSeasonChecklist.of(book, air, gas).text());
        }
        if (!tag && !trend && !checkList) {
            out.print(book.text(units));
        }
    }
}
