package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.ullage.comparison.Explanation;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.size.FoundLoop;
import org.ullage.method.Method;
import org.ullage.published.Methods;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command {@code explain}. */
@Command(
        name = "explain",
        description = {
            "Explains why two methods give different vessels for one loop: from the first to the second one convention at a"
                    + " time, with what each is worth. The steps add up to the difference."
        })
public final class ExplainCommand extends AnswerCommand {

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

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
    protected void answer(PrintWriter out) throws BadFileException {
        Method first = Methods.named(from);
        Method second = Methods.named(to);
        FoundLoop found = loop.find(in);
        // Each alone first, so that a refusal names its method.
        found.size(first);
        found.size(second);
        Average shares = average ? Average.between(found, first, second) : null;
        print(out, new ExplanationSheet(Explanation.between(found.job(), first, second), shares, found.system()));
        requireAverage(shares);
    }

    private void print(PrintWriter out, ExplanationSheet sheet) {
        if (csv) {
            Csv.print(out, sheet.rows());
        } else {
            out.print(sheet.text());
            out.println(CARE);
        }
    }

    private static void requireAverage(@Nullable Average shares) {
        if (shares != null && !shares.refusal().isEmpty()) {
            throw new IllegalArgumentException(shares.refusal());
        }
    }
}
