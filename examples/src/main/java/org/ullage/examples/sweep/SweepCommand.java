package org.ullage.examples.sweep;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.PageFile;
import org.ullage.examples.size.FoundLoop;
import org.ullage.quantity.UnitSystem;
import org.ullage.report.SweepChart;
import org.ullage.sizing.SizingSweep;
import org.ullage.workings.TextTable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command {@code sweep}. */
@Command(
        name = "sweep",
        description = {
            "Shows how the required volume of one loop hangs on two of its inputs: a grid of sizings as text, CSV or an SVG heat"
                    + " map. What the method refuses is a gap.",
            "",
            "An axis is a column of the loop file and its values: hot=60 degC..90 degC, static_head=5 m; 10 m; 20 m, or"
                    + " fluid=water; propylene glycol 30 vol%."
        })
public final class SweepCommand extends AnswerCommand {

    private static final String REFUSED = "refused";

    /** Digits of a volume in the CSV. */
    private static final int DIGITS = 6;

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

    @Option(names = "--down", paramLabel = "AXIS", required = true, description = "what varies from row to row")
    private String down = "";

    @Option(names = "--across", paramLabel = "AXIS", required = true, description = "what varies from column to column")
    private String across = "";

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "7",
            description = "values of an axis given as from..to; ${DEFAULT-VALUE} if not given")
    private int steps;

    @Option(names = "--svg", paramLabel = "FILE", description = "write the heat map to this file")
    private @Nullable String svg;

    @Option(names = "--csv", description = "print one line for each cell as CSV, refusals with their reason")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public SweepCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        FoundLoop found = loop.find(in);
        UnitSystem system = found.system();
        SizingSweep sweep =
                SizingSweep.of(found.method(), found.job(), AxisText.read(down, steps), AxisText.read(across, steps));
        if (svg != null) {
            PageFile.write(svg, SweepChart.of(sweep, system).svg());
        }
        if (csv) {
            Csv.print(out, cells(sweep, system));
            return;
        }
        out.println("Required volume of loop \"" + found.id() + "\" by "
                + found.method().title() + ";");
        out.println(sweep.down().words() + " down, " + sweep.across().words() + " across.");
        out.println();
        out.print(grid(sweep, system).text());
        if (sweep.refused() > 0) {
            out.println();
            out.println(sweep.refused() + " refused; --csv says why.");
        }
        out.println();
        out.println(CARE);
    }

    private static TextTable grid(SizingSweep sweep, UnitSystem system) {
        TextTable grid = new TextTable(after("", sweep.across().labels(system)));
        for (int row = 0; row < sweep.down().size(); row++) {
            int line = row;
            List<String> volumes = IntStream.range(0, sweep.across().size())
                    .mapToObj(column -> sweep.requiredVolume(line, column)
                            .map(volume -> volume.text(system))
                            .orElse(REFUSED))
                    .toList();
            grid.add(after(sweep.down().labels(system).get(row), volumes));
        }
        return grid;
    }

    private static List<String> after(String first, List<String> others) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(others);
        return all;
    }

    private static List<List<String>> cells(SizingSweep sweep, UnitSystem system) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of(column(sweep.down().words()), column(sweep.across().words()), "required_volume", "error"));
        for (int row = 0; row < sweep.down().size(); row++) {
            for (int column = 0; column < sweep.across().size(); column++) {
                cells.add(List.of(
                        sweep.down().labels(system).get(row),
                        sweep.across().labels(system).get(column),
                        sweep.requiredVolume(row, column)
                                .map(volume -> volume.text(system, DIGITS))
                                .orElse(""),
                        sweep.refusal(row, column).orElse("")));
            }
        }
        return cells;
    }

    private static String column(String words) {
        return words.replace(' ', '_');
    }
}
