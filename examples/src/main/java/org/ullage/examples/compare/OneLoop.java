package org.ullage.examples.compare;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.ullage.examples.size.LoopFile;

/** The loop that a command is asked about: a file and an id, {@code -} for standard input. */
final class OneLoop {

    private static final String STANDARD_INPUT = "-";

    private OneLoop() {}

    /**
     * Reads it.
     *
     * @throws IllegalArgumentException if it cannot be found or read; the message names the file
     */
    static LoopFile.Found read(String file, String id, InputStream standardInput) {
        try {
            return file.equals(STANDARD_INPUT) ? LoopFile.find(standardInput, id) : readFile(file, id);
        } catch (NoSuchFileException e) {
            throw new IllegalArgumentException(file + ": there is no such file", e);
        } catch (IOException | IllegalArgumentException e) {
            throw new IllegalArgumentException(file + ": " + e.getMessage(), e);
        }
    }

    private static LoopFile.Found readFile(String file, String id) throws IOException {
        try (InputStream stream = Files.newInputStream(Path.of(file))) {
            return LoopFile.find(stream, id);
        }
    }
}
