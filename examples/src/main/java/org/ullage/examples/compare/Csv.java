package org.ullage.examples.compare;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table as CSV. */
final class Csv {

    private Csv() {}

    static void print(PrintWriter out, List<List<String>> rows) {
        try {
            new CSVPrinter(out, CSVFormat.RFC4180).printRecords(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
