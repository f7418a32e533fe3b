package org.ullage.examples.size;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

    private final InputStream in;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the CSV file; - reads standard input")
    private String file = InputFile.STANDARD_INPUT;

    @Option(
            names = "--workings",
            description = "after the table, print the steps of each answer with formulas and sources")
    private boolean workings;

    @Option(
            names = "--methods",
            description = "put each line to every method, a row each; a method that refuses says why")
    private boolean methods;

    @Option(
            names = "--json",
            description =
                    "print JSON in place of CSV: for each line its id with the sizing, job and answer, or the error")
    private boolean json;

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
        if (json && workings) {
            throw new ParameterException(
                    spec.commandLine(), "--json and --workings do not go together: JSON has no place for the steps");
        }
        try {
            return new InputFile(file, in).read(this::size);
        } catch (BadFileException unreadable) {
            spec.commandLine().getErr().println("ullage size: " + unreadable.getMessage());
            return UNREADABLE;
        }
    }

    private int size(InputStream stream) throws IOException, BadFileException {
        LogicalLines lines = new LogicalLines(stream);
        Header header = Header.read(lines);
        if (!workings) {
            return size(header, lines, null);
        }
        try (WorkingsSpool spool = new WorkingsSpool()) {
            return size(header, lines, spool);
        }
    }

    private int size(Header header, LogicalLines lines, @Nullable WorkingsSpool spool) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Answers sheet = json ? new JsonAnswers(out) : new AnswerSheet(out, methods);
        return new SizeRun(out, sheet, methods, spool).answer(header, lines) ? ANSWERED : LINE_FAILED;
    }
}
