package org.ullage.fluids;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A cited table of this package: comment lines that begin with {@code #}, one line of column names, then tab-separated rows.
 * Immutable.
 */
final class WaterTable {

    private final List<String[]> rows;

    private WaterTable(List<String[]> rows) {
        this.rows = rows;
    }

    static WaterTable read(String resource) {
        try (InputStream stream = WaterTable.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the fluids jar is incomplete: it lacks " + resource);
            }
            return read(stream);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + resource, e);
        }
    }

    private static WaterTable read(InputStream stream) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return new WaterTable(reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split("\t", -1))
                    .collect(Collectors.toUnmodifiableList()));
        }
    }

    /** A column of numbers, in the order of the rows. */
    double[] column(int index) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[index])).toArray();
    }

    /** A column of numbers with a zero put before it, so that published numbering from one can be kept. */
    double[] columnFromOne(int index) {
        double[] numbers = new double[rows.size() + 1];
        System.arraycopy(column(index), 0, numbers, 1, rows.size());
        return numbers;
    }
}
