package org.ullage.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** Prints {@link Contents} as a table and as text. */
final class ContentsText {

    private static final int DIGITS = 4;

    private ContentsText() {}

    static List<List<String>> table(Contents contents, UnitSystem system) {
        boolean single =
                contents.items().stream().allMatch(item -> item.volume().isSingle());
        List<Source> sources = contents.sources();
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(List.of("item", "amount", "each"), heads(single), "source"));
        for (ContentsItem item : contents.items()) {
            List<String> first = List.of(item.name(), item.amount().text(system), each(item, system));
            rows.add(row(first, volumes(item.volume(), single, system), numbers(item, sources)));
        }
        rows.add(row(List.of("total", "", ""), volumes(contents.range(), single, system), ""));
        return rows;
    }

    private static List<String> heads(boolean single) {
        return single ? List.of("contents") : List.of("low", "typical", "high");
    }

    private static List<String> volumes(VolumeRange range, boolean single, UnitSystem system) {
        String typical = range.typical().text(system, DIGITS);
        return single
                ? List.of(typical)
                : List.of(
                        range.low().text(system, DIGITS), typical, range.high().text(system, DIGITS));
    }

    private static List<String> row(List<String> first, List<String> volumes, String last) {
        List<String> row = new ArrayList<>(first);
        row.addAll(volumes);
        row.add(last);
        return List.copyOf(row);
    }

    private static String each(ContentsItem item, UnitSystem system) {
        return item.amount().each(item.volume().typical(), system, DIGITS);
    }

    private static String numbers(ContentsItem item, List<Source> sources) {
        List<String> numbers = item.sources().stream()
                .map(source -> "[" + (sources.indexOf(source) + 1) + "]")
                .toList();
        return String.join("", numbers);
    }

    static String text(Contents contents, UnitSystem system) {
        StringBuilder text = new StringBuilder("Contents, ")
                .append(contents.basis())
                .append(": ")
                .append(contents.range().text(system, DIGITS))
                .append('\n');
        List<List<String>> rows = table(contents, system);
        int[] widths = widths(rows);
        rows.forEach(row -> append(text, row, widths));
        List<Source> sources = contents.sources();
        for (int i = 0; i < sources.size(); i++) {
            text.append('[').append(i + 1).append("] ").append(sources.get(i)).append('\n');
        }
        for (Caution caution : contents.cautions()) {
            text.append("Note: ").append(caution).append('\n');
        }
        return text.toString();
    }

    private static int[] widths(List<List<String>> rows) {
        return IntStream.range(0, rows.get(0).size())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .toArray();
    }

    /** The first column and the last are words and start on the left; the numbers between them end on the right. */
    private static void append(StringBuilder text, List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String blanks = " ".repeat(widths[i] - row.get(i).length());
            boolean words = i == 0 || i == widths.length - 1;
            line.append("  ").append(words ? row.get(i) + blanks : blanks + row.get(i));
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }
}
