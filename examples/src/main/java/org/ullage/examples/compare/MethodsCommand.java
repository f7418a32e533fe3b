package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.comparison.MethodComparison;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.LoopFile;
import org.ullage.published.Methods;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code methods}. */
@Command(
        name = "methods",
        description = {
            "Lists every method with its conventions and where they come from; or, with a file and an id, puts one loop to"
                    + " every method: the answers sorted, those that refuse with their reason, and what a mass balance says"
                    + " of each."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:answered", "1:the loop could not be found or read", "2:the command could not be read"})
public final class MethodsCommand extends CompareCommand {

    private final InputStream in;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "a file of loops as for size; - reads standard input")
    private @Nullable String file;

    @Option(names = "--id", paramLabel = "ID", description = "the loop to compare; needed with a file")
    private String id = "";

    @Option(names = "--csv", description = "print the comparison as CSV")
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
    void answer(PrintWriter out) throws BadFileException {
        if (file == null) {
            Methods.all().forEach(method -> {
                out.println(method.name() + ": " + method);
                out.println("  " + method.source());
            });
            return;
        }
        LoopFile.Found loop = new InputFile(file, in).read(stream -> LoopFile.find(stream, id));
        MethodComparison comparison = MethodComparison.of(loop.job());
        if (csv) {
            List<List<String>> rows = new ArrayList<>(List.of(MethodComparison.HEADER));
            rows.addAll(comparison.rows(loop.system()));
            Csv.print(out, rows);
        } else {
            out.print(comparison.text(loop.system()));
        }
    }
}
