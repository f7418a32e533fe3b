package org.ullage.fluids;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Columns of text and CSV for the printed tables of this package. ASCII, point for decimals, whatever the locale. */
final class FluidText {

    /** Thousandths of a percent point: a tenth of what the models differ by. */
    static final int PERCENT_DECIMALS = 3;

    private FluidText() {}

    /** Rounded half-up to a number of decimals. */
    static String fixed(double number, int decimals) {
        return BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** With a sign, for differences. */
    static String signed(double number, int decimals) {
        String text = fixed(number, decimals);
        return text.startsWith("-") ? text : "+" + text;
    }

    /** Columns padded to their widest cell, two spaces apart; no blanks at line ends. */
    static String columns(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                if (i == widths.size()) {
                    widths.add(0);
                }
                widths.set(i, Math.max(widths.get(i), row.get(i).length()));
            }
        }
        return rows.stream().map(row -> padded(row, widths)).collect(Collectors.joining());
    }

    private static String padded(List<String> row, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            line.append(row.get(i)).append(" ".repeat(widths.get(i) - row.get(i).length() + 2));
        }
        return line.toString().stripTrailing() + "\n";
    }

    /** RFC 4180. */
    static String csv(List<List<String>> rows) {
        return rows.stream()
                .map(row -> row.stream().map(FluidText::quoted).collect(Collectors.joining(",")))
                .map(line -> line + "\r\n")
                .collect(Collectors.joining());
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
