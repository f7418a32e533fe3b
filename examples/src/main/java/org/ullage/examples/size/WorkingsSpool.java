package org.ullage.examples.size;

import java.io.Closeable;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ullage.method.Sizing;
import org.ullage.workings.Caution;

/** Keeps the workings on disk until the table is finished, so that a long file does not fill the memory. */
final class WorkingsSpool implements Closeable {

    private final Path file;
    private final Writer writer;

    WorkingsSpool() throws IOException {
        file = Files.createTempFile("ullage-workings", ".txt");
        writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    }

    /** The workings of one answer under its id. */
    static String text(LoopCase loop, Sizing sizing) {
        StringBuilder text = new StringBuilder(oneLine(loop.line().id())).append('\n');
        if (!loop.line().gives(Column.ATMOSPHERE)) {
            text.append("The pressure of the air was not given: the standard atmosphere, 101.325 kPa abs, is taken.\n");
        }
        text.append(sizing.workings().text(loop.units().system()));
        for (Caution warning : sizing.warnings()) {
            text.append("Warning: ").append(warning).append('\n');
        }
        return text.toString();
    }

    /** An id with line breaks or control characters must not break the page or command the terminal. */
    private static String oneLine(String id) {
        return id.replaceAll("\\p{Cntrl}", "?");
    }

    /** Adds a text, apart from what stands before it. */
    void add(String text) throws IOException {
        writer.append('\n').append(text);
    }

    /** Prints all of them. */
    void copyTo(PrintWriter out) throws IOException {
        writer.flush();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            reader.transferTo(out);
        }
    }

    @Override
    public void close() throws IOException {
        writer.close();
        Files.delete(file);
    }
}
