package org.ullage.examples.size;

import java.io.IOException;
import java.io.InputStream;
import org.ullage.examples.file.BadFileException;
import org.ullage.method.Method;
import org.ullage.method.SizingJob;
import org.ullage.quantity.UnitSystem;

/** Finds one loop in a file of loops, for the commands that look at one. */
public final class LoopFile {

    private LoopFile() {}

    /**
     * One loop of a file.
     *
     * @param method the method it names
     * @param job what is to be sized
     * @param system the system its contents are written in
     */
    public record Found(Method method, SizingJob job, UnitSystem system) {}

    /**
     * Reads the file up to the loop.
     *
     * @param stream the file
     * @param id the id of the loop
     * @return the first loop with that id
     * @throws IOException if the file cannot be read
     * @throws BadFileException if its header cannot be read, no loop has that id or the loop's line cannot be read
     */
    public static Found find(InputStream stream, String id) throws IOException, BadFileException {
        LogicalLines lines = new LogicalLines(stream);
        Header header = Header.read(lines);
        LogicalLine line = lines.next();
        while (line != null) {
            if (!line.isBlank() && id(header, line).equals(id)) {
                return found(header, line);
            }
            line = lines.next();
        }
        throw new BadFileException("no line has the id \"" + id + "\"; give one that stands in the id column");
    }

    private static Found found(Header header, LogicalLine line) throws BadFileException {
        try {
            LoopCase loop = LoopReader.read(header.line(line, line.cells()));
            return new Found(loop.method(), loop.job(), loop.units().system());
        } catch (BadLineException e) {
            throw new BadFileException(String.valueOf(e.getMessage()));
        }
    }

    /** The id of a line; a line that is out of shape matters only if it is the one that is looked for. */
    private static String id(Header header, LogicalLine line) {
        try {
            return header.echo(Column.ID, line.cells()).strip();
        } catch (BadLineException outOfShape) {
            return header.echo(Column.ID, line.roughCells()).strip();
        }
    }
}
