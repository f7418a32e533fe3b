package org.ullage.workings;

import java.util.ArrayList;
import java.util.List;

/** A table of text with columns as wide as their widest cell. Not for many threads. */
public final class TextTable {

    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    /**
     * Begins a table.
     *
     * @param header the titles of the columns
     */
    public TextTable(List<String> header) {
        rows.add(List.copyOf(header));
    }

    /**
     * Adds a row.
     *
     * @param cells one for each column
     * @throws IllegalArgumentException if there are more or fewer cells than columns
     */
    public void add(List<String> cells) {
        int columns = rows.get(0).size();
        if (cells.size() != columns) {
            throw new IllegalArgumentException("a row needs " + columns + " cells; it had " + cells.size());
        }
        rows.add(List.copyOf(cells));
    }

    /**
     * The table as aligned text without trailing blanks.
     *
     * @return a line for the header and each row, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                String cell = row.get(column);
                line.append(cell)
                        .append(" ".repeat(width(column) - cell.length()))
                        .append(GAP);
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
