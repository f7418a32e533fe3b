package org.ullage.provenance;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A table that stands with its sources in a resource file beside a class of this library: header lines {@code # Key: value}, one line of column names, then tab-separated rows. A header
 * {@code # Mark x: PROVENANCE | document | place | reading} is the source of every row whose mark is x. Immutable.
 */
public final class CitedTable {

    private static final Pattern HEADER = Pattern.compile("# ([^:]+): (.*)");

    private static final Pattern BAR = Pattern.compile(" \\| ");

    private final String name;
    private final Map<String, String> header;
    private final List<Map<String, String>> rows;

    private CitedTable(String name, Map<String, String> header, List<Map<String, String>> rows) {
        this.name = name;
        this.header = header;
        this.rows = rows;
    }

    /**
     * Reads a table.
     *
     * @param beside a class of the package it stands in
     * @param name its file name
     * @return the table
     * @throws IllegalStateException if the jar lacks it
     */
    public static CitedTable read(Class<?> beside, String name) {
        try (InputStream stream = beside.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(
                        "the jar of " + beside.getPackageName() + " is incomplete: it lacks " + name);
            }
            return parse(name, lines(stream));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    private static List<String> lines(InputStream stream) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        }
    }

    private static CitedTable parse(String name, List<String> lines) {
        Map<String, String> header = new LinkedHashMap<>();
        List<String[]> cells = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith("#")) {
                var parts = HEADER.matcher(line);
                if (parts.matches()) {
                    header.put(parts.group(1), parts.group(2));
                }
            } else {
                cells.add(line.split("\t", -1));
            }
        }
        String[] columns = cells.get(0);
        return new CitedTable(
                name,
                header,
                cells.stream().skip(1).map(row -> row(columns, row)).toList());
    }

    private static Map<String, String> row(String[] columns, String[] cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            row.put(columns[i], cells[i]);
        }
        return Collections.unmodifiableMap(row);
    }

    /**
     * The rows in their order.
     *
     * @return each a map from column name to cell
     */
    public List<Map<String, String>> rows() {
        return rows;
    }

    /**
     * The value of a header line.
     *
     * @param key what stands before its colon
     * @return what stands behind
     * @throws IllegalStateException if there is none
     */
    public String header(String key) {
        String value = header.get(key);
        if (value == null) {
            throw new IllegalStateException("the jar is damaged: " + name + " lacks the header " + key);
        }
        return value;
    }

    /**
     * The source behind a mark.
     *
     * @param mark as it stands in the rows
     * @return the source
     * @throws IllegalStateException if the header does not explain the mark
     */
    public Source source(String mark) {
        // an empty place and reading may be left out
        String[] parts = BAR.split(header("Mark " + mark) + " |  | ", -1);
        return new Source(Provenance.valueOf(parts[0]), parts[1], parts[2], parts[3]);
    }
}
