package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.comparison.MethodComparison;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.size.FoundLoop;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command {@code methods}. */
@Command(
        name = "methods",
        description = {
            "Lists every method with its conventions and where they come from; or, with a file and an id, puts one loop to"
                    + " every method: the answers sorted, those that refuse with their reason, and what a mass balance says"
                    + " of each."
        })
public final class MethodsCommand extends AnswerCommand {

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "0..1")
    private @Nullable LoopArguments loop;

    @Option(names = "--csv", description = "print as CSV")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public MethodsCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        if (loop != null) {
            compare(out, loop.find(in));
        } else if (csv) {
            Csv.print(out, MethodList.rows());
        } else {
            out.print(MethodList.text());
        }
    }

    private void compare(PrintWriter out, FoundLoop found) {
        MethodComparison comparison = MethodComparison.of(found.job());
        if (csv) {
            Csv.print(out, rows(comparison, found.system()));
        } else {
            out.print(comparison.text(found.system()));
            out.println(CARE);
        }
    }

    /** The answers, then the methods that refuse with their reasons in a column of its own. */
    private static List<List<String>> rows(MethodComparison comparison, UnitSystem system) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(with(MethodComparison.HEADER, "refused"));
        comparison.rows(system).forEach(row -> rows.add(with(row, "")));
        for (MethodComparison.Refusal refusal : comparison.refusals()) {
            List<String> cells = new ArrayList<>(Collections.nCopies(MethodComparison.HEADER.size(), ""));
            cells.set(0, refusal.method().name());
            rows.add(with(cells, refusal.reason()));
        }
        return rows;
    }

    private static List<String> with(List<String> cells, String last) {
        List<String> all = new ArrayList<>(cells);
        all.add(last);
        return all;
    }
}
