package org.ullage.examples.size;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.Quoted;

/** Which column stands where. */
final class Header {

    private final List<Column> columns;

    private Header(List<Column> columns) {
        this.columns = columns;
    }

    /**
     * Reads the header from the first line of a file.
     *
     * @throws BadFileException if there is none, or a column is unknown, doubled or missing
     */
    static Header read(LogicalLines lines) throws IOException, BadFileException {
        LogicalLine first = lines.next();
        if (first == null) {
            throw new BadFileException("it is empty; it must begin with a header, such as " + Column.words());
        }
        return of(first);
    }

    /**
     * Reads the header.
     *
     * @throws BadFileException if a column is unknown, doubled or missing
     */
    static Header of(LogicalLine line) throws BadFileException {
        List<Column> columns = new ArrayList<>();
        for (String name : names(line)) {
            Column column = Column.named(name.strip())
                    .orElseThrow(() -> new BadFileException("the header has the unknown column " + Quoted.of(name)
                            + "; the columns are " + Column.words()));
            if (columns.contains(column)) {
                throw new BadFileException("the header has the column " + column.word() + " twice; keep one of them");
            }
            columns.add(column);
        }
        requireAll(columns);
        return new Header(columns);
    }

    private static List<String> names(LogicalLine line) throws BadFileException {
        try {
            return line.cells();
        } catch (BadLineException e) {
            throw new BadFileException("the header cannot be read: " + e.getMessage());
        }
    }

    private static void requireAll(List<Column> columns) throws BadFileException {
        for (Column column : Column.values()) {
            if (column.required() && !columns.contains(column)) {
                throw new BadFileException("the header lacks the column " + column.word()
                        + "; id, method, vessel, fluid and contents are required");
            }
        }
    }

    /**
     * Puts the cells of a line under their columns.
     *
     * @throws BadLineException if there are more or fewer cells than columns
     */
    LoopLine line(LogicalLine line, List<String> cells) {
        if (cells.size() != columns.size()) {
            throw line.refusal(
                    cells.size() + " cells where the header has " + columns.size() + " columns",
                    "write a comma for every blank cell and put a cell with a comma in double quotes");
        }
        Map<Column, String> byColumn = new EnumMap<>(Column.class);
        for (int i = 0; i < cells.size(); i++) {
            byColumn.put(columns.get(i), cells.get(i));
        }
        return new LoopLine(byColumn);
    }

    /** What a line has in a column, as far as it has one: for the answer to a line that is out of shape. */
    String echo(Column column, List<String> cells) {
        int place = columns.indexOf(column);
        return place < cells.size() ? cells.get(place) : "";
    }
}
