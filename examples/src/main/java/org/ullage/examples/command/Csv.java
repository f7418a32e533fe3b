package org.ullage.examples.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table as CSV. */
public final class Csv {

    private Csv() {}

    /**
     * Prints a table.
     *
     * @param out where to
     * @param rows the rows, the header first
     */
    public static void print(PrintWriter out, List<List<String>> rows) {
        try {
            new CSVPrinter(out, CSVFormat.RFC4180).printRecords(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
