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

    private final List<String> names;
    private final List<List<String>> rows;

    private WaterTable(List<List<String>> lines) {
        names = lines.get(0);
        rows = lines.subList(1, lines.size());
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
                    .map(line -> List.of(line.split("\t", -1)))
                    .collect(Collectors.toUnmodifiableList()));
        }
    }

    /** A column of numbers, in the order of the rows. */
    double[] column(String name) {
        int place = names.indexOf(name);
        return rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get(place)))
                .toArray();
    }

    /** A column of numbers with a zero put before it, so that published numbering from one can be kept. */
    double[] columnFromOne(String name) {
        double[] numbers = new double[rows.size() + 1];
        System.arraycopy(column(name), 0, numbers, 1, rows.size());
        return numbers;
    }
}
