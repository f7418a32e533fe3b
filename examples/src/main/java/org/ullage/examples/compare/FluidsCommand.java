package org.ullage.examples.compare;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.comparison.VesselByFluid;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.LoopFile;
import org.ullage.fluids.FluidComparison;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.GlycolSolution;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code fluids}. */
@Command(
        name = "fluids",
        description = {
            "Holds the models of a fluid against each other between two temperatures: densities, expansion, difference to the"
                    + " chosen model, and those that do not reach so far. With a loop, also what the choice costs in vessel.",
            "Without a fluid it lists the names that are known."
        },
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:answered",
            "1:the fluid, a temperature or the loop could not be read",
            "2:the command could not be read"
        })
public final class FluidsCommand extends CompareCommand {

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
            description = "lower temperature; ${DEFAULT-VALUE} if left out")
    private String from = "10 degC";

    @Option(
            names = "--to",
            paramLabel = "TEMPERATURE",
            description = "higher temperature; ${DEFAULT-VALUE} if left out")
    private String to = "80 degC";

    @Option(names = "--loop", paramLabel = "FILE", description = "a file of loops as for size; - reads standard input")
    private @Nullable String file;

    @Option(names = "--id", paramLabel = "ID", description = "the loop of that file")
    private String id = "";

    @Option(names = "--units", paramLabel = "SYSTEM", description = "SI or IP; ${DEFAULT-VALUE} if left out")
    private UnitSystem units = UnitSystem.SI;

    @Option(names = "--csv", description = "print as CSV")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public FluidsCommand(InputStream in) {
        this.in = in;
    }

    @Override
    void answer(PrintWriter out) throws BadFileException {
        if (fluid == null) {
            Fluids.known().forEach(out::println);
            return;
        }
        LoopFluid chosen = Fluids.parse(fluid);
        if (file == null) {
            compare(out, chosen);
        } else {
            inVessels(out, chosen, new InputFile(file, in).read(stream -> LoopFile.find(stream, id)));
        }
    }

    private void compare(PrintWriter out, LoopFluid chosen) {
        Temperature lower = Temperature.parse(from);
        Temperature upper = Temperature.parse(to);
        FluidComparison comparison = chosen instanceof GlycolSolution solution
                ? FluidComparison.of(solution, lower, upper)
                : FluidComparison.of(Fluids.waterModels(), chosen, lower, upper);
        out.print(csv ? comparison.csv(units) : comparison.text(units));
        if (!csv && chosen instanceof GlycolSolution solution) {
            notes(out, solution, upper);
        }
    }

    private void notes(PrintWriter out, GlycolSolution solution, Temperature upper) {
        out.println("freezes at " + solution.freezingPoint().text(units) + " " + solution.freezingSource());
        out.println("highest recommended temperature: " + solution.glycol().maximumRecommendedTemperature());
        solution.glycol().degradationCaution(upper).ifPresent(caution -> out.println("CAUTION " + caution));
    }

    private void inVessels(PrintWriter out, LoopFluid chosen, LoopFile.Found loop) {
        List<LoopFluid> models = new ArrayList<>(List.of(chosen));
        List<? extends LoopFluid> all = chosen instanceof GlycolSolution solution
                ? solution.glycol().models(solution.volumeFraction())
                : Fluids.waterModels();
        all.stream().filter(model -> !model.model().equals(chosen.model())).forEach(models::add);
        VesselByFluid vessels = VesselByFluid.of(loop.job(), loop.method(), models);
        if (csv) {
            Csv.print(out, vessels.table(loop.system()));
        } else {
            out.println("Vessel of loop " + id + " by " + loop.method().title());
            out.print(vessels.text(loop.system()));
        }
    }
}
