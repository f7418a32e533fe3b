package org.ullage.examples.file;

import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One line of a list.
 *
 * @param number its line of text, from 1
 * @param cells its cells by column
 * @param whole whether it has a cell for every column
 */
public record SheetLine(long number, Map<String, String> cells, boolean whole) {

    /**
     * What stands in a column.
     *
     * @param column the column
     * @return without the blanks around it; empty if nothing does
     */
    public String cell(String column) {
        return cells.getOrDefault(column, "").strip();
    }

    /**
     * Refuses a line that is out of shape.
     *
     * @throws IllegalArgumentException if it has more or fewer cells than the header
     */
    public void requireWhole() {
        if (!whole) {
            throw new IllegalArgumentException("line " + number
                    + " has another number of cells than the header; write a comma for every blank cell and put a cell with a"
                    + " comma in double quotes");
        }
    }

    /**
     * Reads a cell.
     *
     * @param column the column
     * @param reading from text to value
     * @param <T> what it is
     * @return the value, or null if the cell is blank
     * @throws IllegalArgumentException if it cannot be read; the message names line and column
     */
    public <T> @Nullable T optional(String column, Function<String, T> reading) {
        String text = cell(column);
        if (text.isEmpty()) {
            return null;
        }
        try {
            return reading.apply(text);
        } catch (IllegalArgumentException e) {
            throw refusal(column, e.getMessage());
        }
    }

    /**
     * Reads a cell that every line needs.
     *
     * @param column the column
     * @param reading from text to value
     * @param <T> what it is
     * @return the value
     * @throws IllegalArgumentException if it is blank or cannot be read; the message names line and column
     */
    public <T> T required(String column, Function<String, T> reading) {
        T value = optional(column, reading);
        if (value == null) {
            throw refusal(column, "it is blank, and this needs it; fill it in");
        }
        return value;
    }

    private IllegalArgumentException refusal(String column, @Nullable String why) {
        return new IllegalArgumentException("line " + number + ", " + column + ": " + why);
    }
}
