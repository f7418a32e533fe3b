package org.ullage.fluids;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.ullage.provenance.CitedTable;

/** A cited table of this package, read as numbers. A blank cell is a number that the source does not give. Immutable. */
final class NumberTable {

    private final List<Map<String, String>> rows;

    private NumberTable(List<Map<String, String>> rows) {
        this.rows = rows;
    }

    static NumberTable read(String resource) {
        return new NumberTable(CitedTable.read(NumberTable.class, resource).rows());
    }

    /** The rows of which the first cell says so. */
    NumberTable where(Predicate<String> firstCell) {
        return new NumberTable(rows.stream()
                .filter(row -> firstCell.test(row.values().iterator().next()))
                .toList());
    }

    /** The names of the columns in their order. */
    List<String> names() {
        return List.copyOf(rows.get(0).keySet());
    }

    int size() {
        return rows.size();
    }

    String text(int row, String column) {
        return cell(rows.get(row), column);
    }

    double number(int row, String column) {
        return number(text(row, column));
    }

    /** A column of numbers in the order of the rows; NaN stands for a blank. */
    double[] numbers(String column) {
        return rows.stream().mapToDouble(row -> number(cell(row, column))).toArray();
    }

    private static String cell(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static double number(String cell) {
        return cell.isBlank() ? Double.NaN : Double.parseDouble(cell);
    }
}
