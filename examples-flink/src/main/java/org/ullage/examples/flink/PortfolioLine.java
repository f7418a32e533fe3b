package org.ullage.examples.flink;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.SheetFile;
import org.ullage.examples.file.SheetLine;
import org.ullage.examples.size.FoundLoop;
import org.ullage.examples.size.LoopFile;
import org.ullage.uncertainty.SizingUncertainty;

/**
 * One line of a portfolio, read.
 *
 * @param loop what is to be sized
 * @param question the sizing with the line's spreads
 * @param seed hangs on the line's text alone, so that its draws are the same wherever and whenever it is sized
 */
record PortfolioLine(FoundLoop loop, SizingUncertainty question, long seed) {

    /** The columns that a portfolio may have. */
    static final List<String> COLUMNS = Stream.concat(LoopFile.columns().stream(), SpreadColumn.words().stream())
            .toList();

    /**
     * Reads the cells of a line.
     *
     * @throws IllegalArgumentException if they cannot be read
     */
    static SheetLine cells(String header, String text) {
        byte[] file = (header + "\n" + text).getBytes(StandardCharsets.UTF_8);
        try {
            SheetLine line =
                    SheetFile.read(new ByteArrayInputStream(file), COLUMNS).get(0);
            line.requireWhole();
            return line;
        } catch (BadFileException | IOException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /**
     * Reads a line.
     *
     * @throws IllegalArgumentException if a cell cannot be read or is not allowed
     */
    static PortfolioLine of(SheetLine line, String text) {
        Map<String, String> cells = new HashMap<>(line.cells());
        cells.keySet().removeAll(SpreadColumn.words());
        FoundLoop loop = LoopFile.of(cells);
        SizingUncertainty question = SizingUncertainty.of(loop.method(), loop.job());
        for (SpreadColumn column : SpreadColumn.values()) {
            String spread = line.cell(column.word());
            if (!spread.isEmpty()) {
                question = column.spread(question, spread);
            }
        }
        return new PortfolioLine(loop, question, seed(text));
    }

    private static long seed(String text) {
        return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8)).getLeastSignificantBits();
    }
}
