package org.ullage.examples.flink;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads what was written. */
final class Answers {

    private Answers() {}

    /** The rows of all part files that are shown, sorted. */
    static List<String> inFolder(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    // One that no checkpoint covers begins with a dot.
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .flatMap(file -> lines(file).stream())
                    .sorted()
                    .toList();
        }
    }

    /** The rows of one file without its header, sorted. */
    static List<String> inFile(Path file) {
        return lines(file).stream().skip(1).sorted().toList();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
