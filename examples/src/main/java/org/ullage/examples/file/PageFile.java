package org.ullage.examples.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page or a chart that is written to a file. */
public final class PageFile {

    private PageFile() {}

    /**
     * Writes it.
     *
     * @param name the file; its folder must exist
     * @param content the page
     * @throws BadFileException if it cannot be written
     */
    public static void write(String name, String content) throws BadFileException {
        try {
            Files.writeString(Path.of(name), content, StandardCharsets.UTF_8);
        } catch (IOException | IllegalArgumentException e) {
            throw new BadFileException(name + ": it cannot be written ("
                    + e.getClass().getSimpleName() + "); check the folder and that it may be written to");
        }
    }
}
