package org.ullage.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.ullage.workings.TextTable;

/** A table as ASCII text: the widest columns are narrowed and their cells wrapped until the page is wide enough. */
final class TextGrid {

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();
    private final int[] widths;

    private TextGrid(Table table, int pageWidth) {
        columns = table.columns();
        rows.add(columns.stream().map(Column::header).map(AsciiText::line).toList());
        table.rows().forEach(row -> rows.add(row.stream().map(AsciiText::line).toList()));
        widths = IntStream.range(0, columns.size())
                .map(column -> Math.min(pageWidth, natural(column)))
                .toArray();
        narrow(pageWidth);
    }

    static String of(Table table, int pageWidth) {
        return new TextGrid(table, pageWidth).text();
    }

    private int natural(int column) {
        return Math.max(
                1, rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(1));
    }

    /** Between two columns are two blanks. */
    private void narrow(int pageWidth) {
        int room = pageWidth - 2 * (widths.length - 1);
        while (Arrays.stream(widths).sum() > room && widths[widest()] > 1) {
            widths[widest()]--;
        }
    }

    private int widest() {
        return IntStream.range(0, widths.length)
                .reduce((one, other) -> widths[other] > widths[one] ? other : one)
                .orElse(0);
    }

    private String text() {
        List<List<String>> lines = new ArrayList<>(lines(rows.get(0)));
        lines.add(Arrays.stream(widths).mapToObj("-"::repeat).toList());
        List<List<List<String>>> wrapped =
                rows.stream().skip(1).map(this::lines).toList();
        boolean isApart = wrapped.stream().anyMatch(row -> row.size() > 1);
        for (List<List<String>> row : wrapped) {
            if (isApart && row != wrapped.get(0)) {
                lines.add(Collections.nCopies(widths.length, ""));
            }
            lines.addAll(row);
        }
        TextTable grid = new TextTable(lines.get(0));
        lines.stream().skip(1).forEach(grid::add);
        return grid.text();
    }

    /** A row as the lines of its tallest cell. */
    private List<List<String>> lines(List<String> row) {
        List<List<String>> cells = IntStream.range(0, row.size())
                .mapToObj(column -> WrappedText.of(row.get(column), widths[column], 0))
                .toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        return IntStream.range(0, height).mapToObj(line -> line(cells, line)).toList();
    }

    private List<String> line(List<List<String>> cells, int line) {
        return IntStream.range(0, cells.size())
                .mapToObj(column -> {
                    List<String> cell = cells.get(column);
                    return aligned(column, line < cell.size() ? cell.get(line) : "");
                })
                .toList();
    }

    private String aligned(int column, String part) {
        return columns.get(column).isNumeric() ? " ".repeat(widths[column] - part.length()) + part : part;
    }
}
