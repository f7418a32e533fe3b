package org.ullage.examples.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A file named on the command line; {@code -} is standard input.
 *
 * @param name as it was given
 * @param standardInput what is read for {@code -}
 */
public record InputFile(String name, InputStream standardInput) {

    /** The name of standard input. */
    public static final String STANDARD_INPUT = "-";

    /**
     * What is done with the opened file.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Reading<T> {

        /**
         * Reads the file.
         *
         * @param stream the file, closed afterwards unless it is standard input
         * @return what comes of it
         * @throws IOException if it cannot be read, or the answer cannot be written
         * @throws BadFileException if it makes no sense
         */
        T read(InputStream stream) throws IOException, BadFileException;
    }

    /**
     * Opens the file and reads it.
     *
     * @param reading what is done with it
     * @param <T> what comes of it
     * @return what the reading returns
     * @throws BadFileException if it cannot be had or makes no sense; the message names the file
     */
    public <T> T read(Reading<T> reading) throws BadFileException {
        try {
            return name.equals(STANDARD_INPUT) ? reading.read(standardInput) : readNamed(reading);
        } catch (NoSuchFileException | InvalidPathException e) {
            throw refusal("there is no such file");
        } catch (AccessDeniedException e) {
            throw refusal("reading it is not permitted");
        } catch (BadFileException | IOException e) {
            throw refusal(String.valueOf(e.getMessage()));
        }
    }

    private <T> T readNamed(Reading<T> reading) throws IOException, BadFileException {
        try (InputStream stream = Files.newInputStream(Path.of(name))) {
            return reading.read(stream);
        }
    }

    private BadFileException refusal(String why) {
        return new BadFileException((name.equals(STANDARD_INPUT) ? "standard input" : name) + ": " + why);
    }
}
