package org.ullage.examples.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a CSV list with a header of known columns, in any order. */
public final class SheetFile {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private SheetFile() {}

    /**
     * Reads all lines; blank ones are left out.
     *
     * @param in the file
     * @param columns the columns it may have
     * @return its lines
     * @throws IOException if it cannot be read
     * @throws BadFileException if the file is not CSV in UTF-8 or its header is not understood
     */
    public static List<SheetLine> read(InputStream in, List<String> columns) throws IOException, BadFileException {
        // A decoder of one's own would put a mark in the place of bytes that are not UTF-8; this one refuses them.
        InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            return lines(parser, columns);
        } catch (CharacterCodingException e) {
            throw notUtf8();
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof CharacterCodingException) {
                throw notUtf8();
            }
            throw new BadFileException(
                    "a double quote is out of place; put the whole cell in double quotes and write a double"
                            + " quote inside it twice");
        }
    }

    private static BadFileException notUtf8() {
        return new BadFileException("some bytes are not UTF-8; save the file as UTF-8");
    }

    private static List<SheetLine> lines(CSVParser parser, List<String> columns) throws BadFileException {
        List<SheetLine> lines = new ArrayList<>();
        List<String> header = List.of();
        for (CSVRecord record : parser) {
            if (header.isEmpty()) {
                header = header(record.toList(), columns);
            } else if (record.stream().anyMatch(cell -> !cell.isBlank())) {
                lines.add(line(parser.getCurrentLineNumber(), header, record.toList()));
            }
        }
        if (header.isEmpty()) {
            throw new BadFileException("it is empty; it must begin with a header of the columns " + words(columns));
        }
        return lines;
    }

    private static List<String> header(List<String> cells, List<String> columns) throws BadFileException {
        List<String> names = new ArrayList<>();
        for (String cell : cells) {
            String name = cell.replace(BYTE_ORDER_MARK, "").strip();
            if (!columns.contains(name)) {
                throw new BadFileException(
                        "the header has the unknown column " + Quoted.of(name) + "; the columns are " + words(columns));
            }
            if (names.contains(name)) {
                throw new BadFileException("the header has the column " + name + " twice; keep one of them");
            }
            names.add(name);
        }
        return names;
    }

    private static String words(List<String> columns) {
        return String.join(", ", columns);
    }

    private static SheetLine line(long number, List<String> header, List<String> cells) {
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(header.size(), cells.size()); i++) {
            byColumn.put(header.get(i), cells.get(i));
        }
        return new SheetLine(number, byColumn, header.size() == cells.size());
    }
}
