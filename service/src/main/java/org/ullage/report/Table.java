package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A table with a header; the first cell of a row names the row. Immutable.
 *
 * @param title what it shows, for those who do not see it stand below its heading
 * @param columns the columns
 * @param rows a cell for each column
 */
public record Table(String title, List<Column> columns, List<List<String>> rows) implements Block {

    /**
     * Copies the rows and counts their cells.
     *
     * @param title what it shows
     * @param columns the columns
     * @param rows a cell for each column
     * @throws MissingInputException if there is no column
     * @throws OutOfRangeException if a row has more or fewer cells than there are columns
     */
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        if (columns.isEmpty()) {
            throw new MissingInputException("column", "a table", "name one or more columns");
        }
        int width = columns.size();
        rows.stream().filter(row -> row.size() != width).findFirst().ifPresent(row -> {
            throw new OutOfRangeException(
                    "cells in a row",
                    Integer.toString(row.size()),
                    "one for each of " + width + " columns",
                    "count them");
        });
    }

    /**
     * A table without rows.
     *
     * @param title what it shows
     * @param columns the columns
     * @return the table
     */
    public static Table of(String title, Column... columns) {
        return new Table(title, List.of(columns), List.of());
    }

    /**
     * The table with one more row.
     *
     * @param cells one for each column
     * @return the table
     * @throws OutOfRangeException if there are more or fewer cells than columns
     */
    public Table row(String... cells) {
        List<List<String>> more = new ArrayList<>(rows);
        more.add(List.of(cells));
        return new Table(title, columns, more);
    }

    @Override
    public void writeTo(Medium medium) {
        medium.table(this);
    }
}
