package org.ullage.examples.contents;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.file.SheetFile;
import org.ullage.loop.Contents;
import org.ullage.loop.TakeOffRow;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code contents}. */
@Command(
        name = "contents",
        description = {
            "Adds up what the pipes and items of a CSV file hold and prints each line and the total as CSV.",
            "",
            "Columns: a pipe has standard, size and length; an item has item and volume, what one of it holds. count is how"
                    + " many there are, 1 if blank. A pipe may have an item too: its name in the answer.",
            "A volume may be a range, as in \"15 gal to 30 gal\". Values carry units. Leave the expansion vessel out.",
            "",
            "There is no total if a line cannot be read: it would be too small."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:every line was read",
            "1:at least one line was not; its error says why",
            "2:the file or its header could not be read, or the output could not be written",
            "3:a fault of this program"
        })
public final class ContentsCommand implements Callable<Integer> {

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
            names = "--units",
            paramLabel = "SYSTEM",
            description =
                    "answer in SI (litres, metres) or IP (US gallons, feet); without it, as the first line is written")
    private @Nullable UnitSystem units;

    @Option(
            names = "--text",
            description = "print an aligned list with its sources in place of CSV, if every line could be read")
    private boolean text;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public ContentsCommand(InputStream in) {
        this.in = in;
    }

    @Override
    public Integer call() {
        try {
            return new InputFile(file, in).read(stream -> answer(lines(stream)));
        } catch (BadFileException unreadable) {
            spec.commandLine().getErr().println("ullage contents: " + unreadable.getMessage());
            return UNREADABLE;
        } catch (OutOfRangeException tooLarge) {
            spec.commandLine().getErr().println("ullage contents: " + tooLarge.getMessage());
            return LINE_FAILED;
        }
    }

    private static List<TakeOffLine> lines(InputStream stream) throws IOException, BadFileException {
        return SheetFile.read(stream, TakeOffRow.COLUMNS).stream()
                .map(TakeOffLine::new)
                .toList();
    }

    private UnitSystem system(List<TakeOffLine> lines) {
        if (units != null) {
            return units;
        }
        return !lines.isEmpty() && lines.get(0).isInchPound() ? UnitSystem.IP : UnitSystem.SI;
    }

    private int answer(List<TakeOffLine> lines) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        TakeOffAnswer answer = new TakeOffAnswer(lines);
        Optional<Contents> total = answer.total();
        if (text && total.isPresent()) {
            out.print(total.get().text(system(lines)));
        } else {
            // Whole or not at all: a volume may be too large for the unit it is to be printed in.
            StringWriter sheet = new StringWriter();
            TakeOffSheet.print(answer, new PrintWriter(sheet), system(lines));
            out.print(sheet);
        }
        // A writer keeps silent about a reader that has gone.
        if (out.checkError()) {
            throw new IOException("the answer could not be written to standard output");
        }
        return total.isPresent() ? ANSWERED : LINE_FAILED;
    }
}
