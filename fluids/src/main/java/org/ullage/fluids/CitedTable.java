package org.ullage.fluids;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;

/**
 * A table of this package that says in its first lines where it comes from: comment lines beginning with {@code #}, one line
 * of column names, then tab-separated rows. A blank cell is a number that the source does not give. Immutable.
 */
final class CitedTable {

    private final List<String> names;
    private final List<List<String>> rows;

    private CitedTable(List<String> names, List<List<String>> rows) {
        this.names = names;
        this.rows = rows;
    }

    static CitedTable read(String resource) {
        try (InputStream stream = CitedTable.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the fluids jar is incomplete: it lacks " + resource);
            }
            return of(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split("\t", -1)))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + resource, e);
        }
    }

    private static CitedTable of(List<List<String>> lines) {
        return new CitedTable(lines.get(0), lines.subList(1, lines.size()));
    }

    /** The rows of which the first cell says so. */
    CitedTable where(Predicate<String> firstCell) {
        return new CitedTable(
                names, rows.stream().filter(row -> firstCell.test(row.get(0))).toList());
    }

    List<String> names() {
        return names;
    }

    int size() {
        return rows.size();
    }

    String text(int row, String column) {
        return rows.get(row).get(names.indexOf(column));
    }

    double number(int row, String column) {
        return number(text(row, column));
    }

    /** A column of numbers in the order of the rows; NaN stands for a blank. */
    double[] numbers(String column) {
        int index = names.indexOf(column);
        return rows.stream().mapToDouble(row -> number(row.get(index))).toArray();
    }

    private static double number(String cell) {
        return cell.isBlank() ? Double.NaN : Double.parseDouble(cell);
    }
}
