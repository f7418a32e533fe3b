package org.ullage.examples.contents;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ullage.loop.ContentsItem;
import org.ullage.loop.TakeOff;
import org.ullage.loop.TakeOffRow;

/**
 * One line of the file.
 *
 * @param number its line of text, from 1
 * @param cells its cells by column
 * @param whole whether it has a cell for every column
 */
record TakeOffLine(long number, Map<String, String> cells, boolean whole) {

    private String cell(String column) {
        return cells.getOrDefault(column, "").strip();
    }

    /** What names the line in the answer to it. */
    String name() {
        return Stream.of("item", "standard", "size")
                .map(this::cell)
                .filter(cell -> !cell.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** Whether its length or volume is written in feet, inches, gallons or cubic feet. */
    boolean isInchPound() {
        return Stream.of("length", "volume")
                .map(this::cell)
                .anyMatch(cell -> cell.matches(".*(ft|in|gal|gallons?|ft3)"));
    }

    /**
     * Its contents.
     *
     * @throws IllegalArgumentException if it cannot be read, with the reason for people
     */
    ContentsItem read() {
        if (!whole) {
            throw new IllegalArgumentException("line " + number
                    + " has another number of cells than the header; write a comma for every blank cell and put a cell with a"
                    + " comma in double quotes");
        }
        return new TakeOffRow(cells).addTo(TakeOff.start()).contents().items().get(0);
    }
}
