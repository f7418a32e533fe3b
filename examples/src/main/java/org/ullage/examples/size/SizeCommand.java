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
        },
        footer = {
            "",
            "The file begins with a header that names its columns, in any order. Values carry units:",
            "3000 gal, 1.2 m3, 40 degF, 80 degC, 10 psi, 1.5 bar, 9 m. Pressures are gauge unless the",
            "unit says abs (24.7 psi abs). A blank cell means: not given.",
            "",
            "  id *            any text; it is repeated in the answer",
            "  method *        ashrae, asme-iv, en-12828 or raccolta-r",
            "  vessel *        diaphragm, bladder, plain-steel or open",
            "  fluid *         water, propylene glycol 30 vol%%, ethylene glycol 40 mass%%;",
            "                  a model may follow, as in water/if97",
            "  contents *      volume of the loop without the vessel",
            "  cold            lowest (or fill) temperature",
            "  hot             highest temperature; for asme-iv the average of supply and return",
            "  pipe            steel, copper, none (no credit for its growth) or blank",
            "  cold_pressure   pressure at the vessel when cold, taken as it is",
            "  final_pressure  pressure at the vessel when hot, taken as it is",
            "  static_head     in place of cold_pressure: height of the loop above the vessel",
            "  relief_setting  in place of final_pressure: the method's margins are applied",
            "  precharge       only where it differs from the method's rule",
            "  atmosphere      pressure of the air, or an altitude; 101.325 kPa if blank",
            "",
            "Columns with * are required. Volumes are answered in the unit of contents, pressures as",
            "gauge in the unit of the first of cold_pressure, final_pressure, relief_setting and",
            "precharge that is given, else in bar.",
            "",
            "Pressurised hot water can injure and a full vessel is heavy. Local codes, the makers'",
            "instructions and the judgement of a licensed person come before these numbers."
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

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public SizeCommand(InputStream in) {
        this.in = in;
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
