package org.ullage.examples.command;

import java.io.InputStream;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.FoundLoop;
import org.ullage.examples.size.LoopFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The loop a command is asked about: a file and an id, which belong together. */
public final class LoopArguments {

    @Parameters(paramLabel = "FILE", arity = "1", description = "a file of loops as for size; - reads standard input")
    private String file = "";

    @Option(names = "--id", paramLabel = "ID", required = true, description = "the loop of that file")
    private String id = "";

    /**
     * Finds the loop.
     *
     * @param standardInput what is read for {@code -}
     * @return the loop
     * @throws BadFileException if the file or its header cannot be read
     * @throws IllegalArgumentException if no loop has that id or its line cannot be read
     */
    public FoundLoop find(InputStream standardInput) throws BadFileException {
        return LoopFile.find(new InputFile(file, standardInput), id);
    }
}
