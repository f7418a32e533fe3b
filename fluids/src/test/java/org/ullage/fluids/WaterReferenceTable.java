package org.ullage.fluids;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rows of a cited table of reference values, read by column name. */
final class WaterReferenceTable {

    private WaterReferenceTable() {}

    static Stream<Row> rows(String resource) {
        List<String> lines = lines(resource);
        List<String> names = List.of(lines.get(0).split("\t", -1));
        return lines.stream().skip(1).map(line -> new Row(names, List.of(line.split("\t", -1))));
    }

    private static List<String> lines(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(WaterReferenceTable.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.startsWith("#")).collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One row, printed by its values. */
    record Row(List<String> names, List<String> values) {

        String text(String column) {
            return values.get(IntStream.range(0, names.size())
                    .filter(i -> names.get(i).equals(column))
                    .findFirst()
                    .orElseThrow());
        }

        /** The number exactly as printed, with its number of digits. */
        BigDecimal printed(String column) {
            return new BigDecimal(text(column));
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        @Override
        public String toString() {
            return String.join(" ", values);
        }
    }
}
