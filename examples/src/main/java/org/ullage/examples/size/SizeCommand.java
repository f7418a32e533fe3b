package org.ullage.examples.size;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code size}. */
@Command(
        name = "size",
        description = {
            "Sizes the vessel of every loop in a CSV file and prints the answers as CSV (RFC 4180, UTF-8), in the same order.",
            "A line that cannot be answered says why in its error column; the others are answered all the same."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:every line was answered by the method it names",
            "1:at least one line was not",
            "2:the file or its header could not be read, or the output could not be written",
            "3:a fault of this program"
        })
public final class SizeCommand implements Callable<Integer> {

    private static final int ANSWERED = 0;
    private static final int LINE_FAILED = 1;
    private static final int UNREADABLE = 2;
    private static final String STANDARD_INPUT = "-";

    private final InputStream in;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the CSV file; - reads standard input")
    private String file = STANDARD_INPUT;

    @Option(
            names = "--workings",
            description = "after the table, print the steps of each answer with formulas and sources")
    private boolean workings;

    @Option(
            names = "--methods",
            description = "put each line to every method, a row each; a method that refuses says why")
    private boolean methods;

    private SizeCommand(InputStream in) {
        this.in = in;
    }

    /**
     * Makes the command with its help.
     *
     * @param in standard input
     * @return the command, to be hung into a command line
     */
    public static CommandLine reading(InputStream in) {
        CommandLine command = new CommandLine(new SizeCommand(in));
        command.getCommandSpec().usageMessage().footer(SizeHelp.lines());
        return command;
    }

    @Override
    public Integer call() {
        try {
            return file.equals(STANDARD_INPUT) ? size(in) : sizeFile();
        } catch (NoSuchFileException | InvalidPathException e) {
            return unreadable("there is no such file");
        } catch (AccessDeniedException e) {
            return unreadable("reading it is not permitted");
        } catch (BadHeaderException | IOException e) {
            return unreadable(String.valueOf(e.getMessage()));
        }
    }

    private int unreadable(String why) {
        String name = file.equals(STANDARD_INPUT) ? "standard input" : file;
        spec.commandLine().getErr().println("ullage size: " + name + ": " + why);
        return UNREADABLE;
    }

    private int sizeFile() throws IOException, BadHeaderException {
        try (InputStream stream = Files.newInputStream(Path.of(file))) {
            return size(stream);
        }
    }

    private int size(InputStream stream) throws IOException, BadHeaderException {
        LogicalLines lines = new LogicalLines(stream);
        LogicalLine first = lines.next();
        if (first == null) {
            throw new BadHeaderException("it is empty; it must begin with a header, such as " + Column.words());
        }
        Header header = Header.of(first);
        if (!workings) {
            return size(header, lines, null);
        }
        try (WorkingsSpool spool = new WorkingsSpool()) {
            return size(header, lines, spool);
        }
    }

    private int size(Header header, LogicalLines lines, @Nullable WorkingsSpool spool) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        return new SizeRun(out, methods, spool).answer(header, lines) ? ANSWERED : LINE_FAILED;
    }
}
