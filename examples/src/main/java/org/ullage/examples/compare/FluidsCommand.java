package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.FoundLoop;
import org.ullage.examples.size.LoopFile;
import org.ullage.fluids.FluidComparison;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.GlycolSolution;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code fluids}. */
@Command(
        name = "fluids",
        description = {
            "Holds the models of a fluid against each other between two temperatures: densities, expansion, difference to the"
                    + " chosen model, stated uncertainty, and those that do not reach so far. With a loop, also what the"
                    + " choice costs in vessel, by the method of the loop and with this fluid in place of its own.",
            "Without a fluid it lists the names and models that are known."
        })
public final class FluidsCommand extends AnswerCommand {

    private final InputStream in;

    @Parameters(
            paramLabel = "FLUID",
            arity = "0..1",
            description =
                    "such as \"water\" or \"ethylene glycol 40 vol%%/melinder\"; the model after / is the chosen one")
    private @Nullable String fluid;

    @Option(
            names = "--from",
            paramLabel = "TEMPERATURE",
            description = "temperature at the start; the loop's cold, or 10 degC, if left out")
    private @Nullable String from;

    @Option(
            names = "--to",
            paramLabel = "TEMPERATURE",
            description = "temperature at the end; the loop's hot, or 80 degC, if left out")
    private @Nullable String to;

    @ArgGroup(exclusive = false, multiplicity = "0..1")
    private @Nullable LoopOptions loop;

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "densities and temperatures in SI or IP; without it, as the first temperature or the loop is"
                    + " written")
    private @Nullable UnitSystem units;

    @Option(names = "--csv", description = "print as CSV; with a loop, its vessels alone")
    private boolean csv;

    /** The loop, which here comes by options alone. */
    private static final class LoopOptions {

        @Option(
                names = "--loop",
                paramLabel = "FILE",
                required = true,
                description = "a file of loops as for size; - reads standard input")
        private String file = "";

        @Option(names = "--id", paramLabel = "ID", required = true, description = "the loop of that file")
        private String id = "";
    }

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public FluidsCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        if (fluid == null) {
            list(out, FluidSpan.of(from, to, null).in(units).system());
            return;
        }
        LoopFluid chosen = Fluids.parse(fluid);
        FoundLoop found = loop == null ? null : LoopFile.find(new InputFile(loop.file, in), loop.id);
        FluidSpan span = FluidSpan.of(from, to, found).in(units);
        if (csv) {
            printCsv(out, chosen, found, span);
        } else {
            printText(out, chosen, found, span);
        }
    }

    private void list(PrintWriter out, UnitSystem system) {
        if (csv) {
            Csv.print(out, FluidList.rows(system));
        } else {
            out.print(FluidList.text(system));
        }
    }

    private static void printCsv(PrintWriter out, LoopFluid chosen, @Nullable FoundLoop found, FluidSpan span) {
        if (found == null) {
            out.print(compared(chosen, span).csv(span.system()));
        } else {
            Csv.print(out, new FluidInVessels(found, chosen).rows());
        }
    }

    private static void printText(PrintWriter out, LoopFluid chosen, @Nullable FoundLoop found, FluidSpan span) {
        String vessels = found == null ? "" : "\n" + new FluidInVessels(found, chosen).text();
        out.print(compared(chosen, span).text(span.system()));
        if (chosen instanceof GlycolSolution solution) {
            out.print(GlycolNotes.text(solution, span.highest(), span.system()));
        }
        out.print(vessels);
        if (found != null) {
            out.println(CARE);
        }
    }

    private static FluidComparison compared(LoopFluid chosen, FluidSpan span) {
        return chosen instanceof GlycolSolution solution
                ? FluidComparison.of(solution, span.from(), span.to())
                : FluidComparison.of(Fluids.waterModels(), chosen, span.from(), span.to());
    }
}
