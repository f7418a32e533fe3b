package org.ullage.examples;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One run of the program in this process, with what it printed. */
public record Program(int status, String out, String err) {

    /** Every column of the input. */
    public static final String HEADER = "id,method,vessel,fluid,contents,cold,hot,pipe,cold_pressure,final_pressure,"
            + "static_head,relief_setting,precharge,atmosphere";

    /** Runs it without anything on standard input. */
    public static Program run(String... arguments) {
        return run(InputStream.nullInputStream(), arguments);
    }

    /** Runs it with standard input. */
    public static Program run(InputStream in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Ullage.run(arguments, in, out, err);
        return new Program(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Sizes a file handed over as standard input. */
    public static Program size(String file, String... options) {
        return size(file.getBytes(StandardCharsets.UTF_8), options);
    }

    /** Sizes a file of any bytes. */
    public static Program size(byte[] file, String... options) {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "size";
        System.arraycopy(options, 0, arguments, 1, options.length);
        arguments[options.length + 1] = "-";
        return run(new ByteArrayInputStream(file), arguments);
    }

    /** Sizes lines under the full header. */
    public static Program sizeLines(String... lines) {
        return size(HEADER + "\n" + String.join("\n", lines) + "\n");
    }

    /** The printed table, a map from column to cell for each row. */
    public List<Map<String, String>> rows() {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().get();
        try (CSVParser parser = CSVParser.parse(out, format)) {
            return parser.getRecords().stream().map(CSVRecord::toMap).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The only row. */
    public Map<String, String> row() {
        if (rows().size() != 1) {
            throw new AssertionError("one row expected: " + out);
        }
        return rows().get(0);
    }
}
