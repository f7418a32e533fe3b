package org.ullage.examples.choose;

import java.io.InputStream;
import java.io.PrintWriter;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.size.FoundLoop;
import org.ullage.method.Sizing;
import org.ullage.quantity.UnitSystem;
import org.ullage.selection.Catalogue;
import org.ullage.selection.NextSizeDown;
import org.ullage.selection.Selection;
import org.ullage.selection.SizedGas;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code choose}. */
@Command(
        name = "choose",
        description = {
            "Sizes one loop of a file of loops, as its line says, and chooses one or several vessels for it from a catalogue of"
                    + " your own, exactly: no other combination within the limits is better.",
            "",
            "Columns of the catalogue: id, kind, nominal, max_pressure, max_temperature, empty_mass, diameter or footprint,"
                    + " height, connection, price (a plain number, all in one currency); acceptance_limit and stock may be"
                    + " blank. Values carry units.",
            "",
            "Several vessels get one charge and hang on one pipe; each needs a lockable valve and a drain of its own."
        })
public final class ChooseCommand extends AnswerCommand {

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

    @Option(names = "--catalogue", paramLabel = "FILE", required = true, description = "the CSV file of vessels")
    private String catalogue = "";

    @Mixin
    private ChoiceArguments choice = new ChoiceArguments();

    @Option(names = "--csv", description = "print as CSV, a row for each size that is bought")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public ChooseCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        FoundLoop line = loop.find(in);
        Catalogue vessels = CatalogueFile.read(new InputFile(catalogue, in));
        Sizing sizing = line.size(line.method());
        Selection selection = vessels.choose(choice.job(sizing)).orRefuse();
        if (csv) {
            Csv.print(out, ChoiceSheet.rows(line.id(), selection, line.system()));
        } else {
            print(out, selection, sizing, line.system());
        }
    }

    private static void print(PrintWriter out, Selection selection, Sizing sizing, UnitSystem system) {
        out.print(selection.text(system));
        if (sizing.job().pressures().reliefSetting() != null) {
            NextSizeDown smaller = selection.nextSizeDown(SizedGas.of(sizing));
            out.println(
                    "next size down: " + (smaller == null ? "none would be enough for less" : smaller.text(system)));
        }
        out.println("\nwhat else there is, by price, footprint and number of vessels:");
        out.print(selection.front().text(system));
        out.println(CARE);
    }
}
