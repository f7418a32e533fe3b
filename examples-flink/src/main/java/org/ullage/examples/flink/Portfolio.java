package org.ullage.examples.flink;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ullage.examples.file.BadFileException;

/**
 * A file of loops with their spreads, a line of text for each: no cell may have a line break, because the file is cut at any of them.
 *
 * @param file in UTF-8, with a header
 * @param header its first line
 */
record Portfolio(Path file, String header) {

    /**
     * Looks at the header.
     *
     * @throws BadFileException if there is none or it has an unknown column
     */
    static Portfolio in(Path file) throws IOException, BadFileException {
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            String header = reader.readLine();
            if (header == null) {
                throw new BadFileException(file + " is empty; it must begin with a header");
            }
            List<String> unknown = Stream.of(header.split(",", -1))
                    .filter(column -> !PortfolioLine.COLUMNS.contains(column))
                    .toList();
            if (!unknown.isEmpty()) {
                throw new BadFileException(file + " has the unknown columns " + unknown + "; the columns are "
                        + String.join(", ", PortfolioLine.COLUMNS));
            }
            return new Portfolio(file, header);
        }
    }

    /** Whether a line of the file is a loop, and not its header or blank. */
    boolean isLoop(String line) {
        return !line.isBlank() && !line.equals(header);
    }
}
