package org.ullage.report;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.ullage.quantity.OutOfRangeException;

/**
 * A grid of numbers as colours, the darker the larger, with the number in the cell where there is room. Immutable.
 *
 * @param title what it shows
 * @param valueName what the numbers are, with their unit
 * @param gapName what a gap means, for the legend
 * @param down what varies from row to row, with a label for each row
 * @param across what varies from column to column, with a label for each column
 * @param cells the rows from top to bottom, each with a cell for every column
 */
public record HeatMap(
        String title, String valueName, String gapName, Steps down, Steps across, List<List<HeatCell>> cells)
        implements Chart {

    /**
     * What varies along one edge of a heat map.
     *
     * @param name what it is
     * @param labels its values in order
     */
    public record Steps(String name, List<String> labels) implements Serializable {

        /**
         * Copies the labels.
         *
         * @param name what it is
         * @param labels its values in order
         */
        public Steps {
            labels = List.copyOf(labels);
        }
    }

    /**
     * Copies the cells and checks that the grid is full.
     *
     * @param title what it shows
     * @param valueName what the numbers are
     * @param gapName what a gap means
     * @param down what varies from row to row
     * @param across what varies from column to column
     * @param cells the rows from top to bottom
     * @throws OutOfRangeException if rows or cells are too few or too many, or there are none
     */
    public HeatMap {
        cells = cells.stream().map(List::copyOf).toList();
        requireSize("rows of a heat map", cells.size(), down);
        cells.forEach(row -> requireSize("cells in a row of a heat map", row.size(), across));
    }

    private static void requireSize(String what, int size, Steps edge) {
        if (size == 0 || size != edge.labels().size()) {
            throw new OutOfRangeException(
                    what,
                    String.valueOf(size),
                    "as many as there are labels, " + edge.labels().size() + ", and one at least",
                    "give every cell, as a gap if it has no number");
        }
    }

    @Override
    public String description() {
        String range = numbers().findAny().isEmpty() ? "no data" : "from " + leastLabel() + " to " + largestLabel();
        long gaps = cells.stream()
                .flatMap(List::stream)
                .filter(cell -> cell.value() == null)
                .count();
        return valueName + ", " + range + "; down: " + down.name() + ", " + ends(down) + "; across: " + across.name()
                + ", " + ends(across) + "."
                + (gaps == 0 ? "" : " Cells without a number: " + gaps + ", " + gapName + ".");
    }

    private static String ends(Steps edge) {
        return edge.labels().get(0) + " to " + edge.labels().get(edge.labels().size() - 1);
    }

    /** The label of the smallest number; empty without any. */
    String leastLabel() {
        return labelOf(numbers().min().orElse(0));
    }

    /** The label of the largest number; empty without any. */
    String largestLabel() {
        return labelOf(numbers().max().orElse(0));
    }

    private String labelOf(double value) {
        return cells.stream()
                .flatMap(List::stream)
                .filter(cell -> Objects.equals(cell.value(), value))
                .map(HeatCell::label)
                .findFirst()
                .orElse("");
    }

    private DoubleStream numbers() {
        return cells.stream()
                .flatMap(List::stream)
                .map(HeatCell::value)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue);
    }

    Extent extent() {
        return Extent.of(numbers());
    }

    @Override
    public String svg(ChartWidth width) {
        return new HeatMapDrawing(this, width.pixels()).svg();
    }
}
