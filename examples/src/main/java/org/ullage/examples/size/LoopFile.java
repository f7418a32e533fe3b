package org.ullage.examples.size;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;

/** Finds one loop in a file of loops, for the commands that look at one. */
public final class LoopFile {

    private LoopFile() {}

    /**
     * Reads the file up to the loop.
     *
     * @param file the file
     * @param id the id of the loop
     * @return the first loop with that id
     * @throws BadFileException if the file or its header cannot be read
     * @throws IllegalArgumentException if no loop has that id or the loop's line cannot be read
     */
    public static FoundLoop find(InputFile file, String id) throws BadFileException {
        return file.read(stream -> find(stream, id));
    }

    /**
     * The columns of a file of loops.
     *
     * @return their names
     */
    public static List<String> columns() {
        return Arrays.stream(Column.values()).map(Column::word).toList();
    }

    /**
     * Reads a loop of which the cells are at hand, for lists that say more of a loop than its file does.
     *
     * @param cells text by column
     * @return the loop
     * @throws IllegalArgumentException if a column is unknown, or a cell cannot be read or is not allowed
     */
    public static FoundLoop of(Map<String, String> cells) {
        Map<Column, String> byColumn = new EnumMap<>(Column.class);
        cells.forEach((word, text) -> byColumn.put(
                Column.named(word)
                        .orElseThrow(() -> new BadLineException(
                                "the column \"" + word + "\" is unknown; the columns are " + Column.words())),
                text));
        return new FoundLoop(LoopReader.read(new LoopLine(byColumn)));
    }

    private static FoundLoop find(InputStream stream, String id) throws IOException, BadFileException {
        LogicalLines lines = new LogicalLines(stream);
        Header header = Header.read(lines);
        LogicalLine line = lines.next();
        while (line != null) {
            if (!line.isBlank() && id(header, line).equals(id.strip())) {
                return found(header, line);
            }
            line = lines.next();
        }
        throw new IllegalArgumentException(
                "no line has the id \"" + id + "\"; give one that stands in the id column, in quotes if it has blanks");
    }

    private static FoundLoop found(Header header, LogicalLine line) {
        try {
            return new FoundLoop(LoopReader.read(header.line(line, line.cells())));
        } catch (BadLineException e) {
            throw new IllegalArgumentException("loop \"" + id(header, line) + "\": " + e.getMessage(), e);
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
