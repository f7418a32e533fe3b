package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.ullage.comparison.ConventionShares;
import org.ullage.comparison.Explanation;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.LoopFile;
import org.ullage.method.Method;
import org.ullage.published.Methods;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code explain}. */
@Command(
        name = "explain",
        description = {
            "Explains why two methods give different vessels for one loop: from the first to the second one convention at a"
                    + " time, with what each is worth. The steps add up to the difference."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:answered",
            "1:the loop could not be found or read, or one of the methods refuses it",
            "2:the command could not be read"
        })
public final class ExplainCommand extends CompareCommand {

    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "a file of loops as for size; - reads standard input")
    private String file = "";

    @Option(names = "--id", paramLabel = "ID", required = true, description = "the loop")
    private String id = "";

    @Option(names = "--from", paramLabel = "METHOD", required = true, description = "the method to start from")
    private String from = "";

    @Option(names = "--to", paramLabel = "METHOD", required = true, description = "the method to arrive at")
    private String to = "";

    @Option(
            names = "--average",
            description = "add what each convention is worth on the average over all orders of exchange")
    private boolean average;

    @Option(names = "--csv", description = "print the steps as CSV")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public ExplainCommand(InputStream in) {
        this.in = in;
    }

    @Override
    void answer(PrintWriter out) throws BadFileException {
        LoopFile.Found loop = new InputFile(file, in).read(stream -> LoopFile.find(stream, id));
        Method first = Methods.named(from);
        Method second = Methods.named(to);
        Explanation explanation = Explanation.between(loop.job(), first, second);
        if (csv) {
            Csv.print(out, rows(explanation, loop.system()));
        } else {
            out.print(explanation.text(loop.system()));
        }
        if (average) {
            out.println("Average over all orders:");
            ConventionShares.between(loop.job(), first, second)
                    .shares()
                    .forEach((convention, share) -> out.println("  " + convention + "  " + share.text(loop.system())));
        }
    }

    private static List<List<String>> rows(Explanation explanation, UnitSystem system) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("conventions", "difference", "required_volume"));
        rows.add(List.of(
                explanation.first().method().name(),
                "",
                explanation.first().requiredVolume().text(system)));
        explanation
                .changes()
                .forEach(change -> rows.add(List.of(
                        String.join(
                                " + ",
                                change.conventions().stream()
                                        .map(Enum::toString)
                                        .toList()),
                        change.difference().text(system),
                        change.after().text(system))));
        return rows;
    }
}
