package org.ullage.examples.size;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ullage.method.Sizing;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Unit;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/** The answers as CSV, one row at a time. */
final class AnswerSheet implements Answers {

    private static final int DIGITS = 6;

    private static final List<String> ANSWER_COLUMNS = List.of(
            "required_volume",
            "expansion_volume",
            "acceptance_volume",
            "precharge",
            "cold_pressure",
            "final_pressure",
            "warnings");

    private final PrintWriter out;
    private final CSVPrinter printer;
    private final boolean withMethod;

    /**
     * Begins the sheet with its header.
     *
     * @param withMethod whether a column tells the method of each row
     */
    AnswerSheet(PrintWriter out, boolean withMethod) throws IOException {
        this.out = out;
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        this.withMethod = withMethod;
        row("id", "method", ANSWER_COLUMNS, "error");
    }

    @Override
    public void answer(LoopCase loop, Sizing sizing) throws IOException {
        row(loop.line().id(), sizing.method().name(), cells(sizing, loop.units()), "");
    }

    @Override
    public void refuse(String id, String method, String error) throws IOException {
        row(id, method, Collections.nCopies(ANSWER_COLUMNS.size(), ""), error);
    }

    /** A table ends with its last row. */
    @Override
    public void end() {}

    private static List<String> cells(Sizing sizing, AnswerUnits units) {
        boolean open = sizing.job().vessel().kind() == VesselKind.OPEN;
        return List.of(
                text(sizing.requiredVolume(), units.volume()),
                text(sizing.expansionVolume(), units.volume()),
                text(sizing.acceptanceVolume(), units.volume()),
                open ? "" : text(sizing.preCharge(), units.pressure()),
                open ? "" : text(sizing.coldPressure(), units.pressure()),
                open ? "" : text(sizing.finalPressure(), units.pressure()),
                sizing.warnings().stream().map(Caution::text).collect(Collectors.joining(" | ")));
    }

    private static <D> String text(Quantity<?, D> quantity, Unit<D> unit) {
        return quantity.text(unit, DIGITS);
    }

    private void row(String id, String method, List<String> answer, String error) throws IOException {
        List<String> cells = new ArrayList<>();
        cells.add(id);
        if (withMethod) {
            cells.add(method);
        }
        cells.addAll(answer);
        cells.add(error);
        printer.printRecord(cells);
        // A writer keeps silent about a reader that has gone; to go on for it would be work for nothing.
        if (out.checkError()) {
            throw new IOException("the answers could not be written to standard output");
        }
    }
}
