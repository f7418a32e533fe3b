package org.ullage.examples.contents;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ullage.loop.Contents;
import org.ullage.loop.ContentsItem;
import org.ullage.loop.VolumeRange;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;

/** The contents as CSV, a row for each line and one for the total. */
final class TakeOffSheet {

    private static final int DIGITS = 6;

    private final CSVPrinter printer;
    private final UnitSystem system;

    private TakeOffSheet(PrintWriter out, UnitSystem system) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        this.system = system;
    }

    static void print(TakeOffAnswer answer, PrintWriter out, UnitSystem system) throws IOException {
        TakeOffSheet sheet = new TakeOffSheet(out, system);
        sheet.printer.printRecord("item", "amount", "each", "low", "typical", "high", "source", "error");
        for (TakeOffAnswer.Row row : answer.rows()) {
            ContentsItem item = row.item();
            if (item == null) {
                sheet.refusal(row.line().name(), row.error());
            } else {
                sheet.item(item);
            }
        }
        Optional<Contents> total = answer.total();
        if (total.isPresent()) {
            sheet.row(List.of("total", "", ""), total.get().range(), "");
        } else {
            sheet.refusal("total", answer.noTotal());
        }
    }

    private void item(ContentsItem item) throws IOException {
        String sources = item.sources().stream().map(Source::toString).collect(Collectors.joining(" | "));
        String each = item.amount().each(item.volume().typical(), system, DIGITS);
        row(List.of(item.name(), item.amount().text(system), each), item.volume(), sources);
    }

    private void refusal(String name, String error) throws IOException {
        printer.printRecord(name, "", "", "", "", "", "", error);
    }

    private void row(List<String> first, VolumeRange volume, String sources) throws IOException {
        printer.printRecord(
                first.get(0),
                first.get(1),
                first.get(2),
                volume.low().text(system, DIGITS),
                volume.typical().text(system, DIGITS),
                volume.high().text(system, DIGITS),
                sources,
                "");
    }
}
