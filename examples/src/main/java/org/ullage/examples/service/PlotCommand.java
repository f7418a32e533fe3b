package org.ullage.examples.service;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.PageFile;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingPoint;
import org.ullage.operation.ReliefOutlook;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code plot}. */
@Command(
        name = "plot",
        description = {
            "Works out the pressure of one loop against its temperature with the vessel that was installed: the normal swing as"
                    + " a band, where the relief valve may open, when the vessel runs empty; as text, CSV or an SVG chart.",
            "",
            "A change of pressure with temperature alone is no sign of failure."
        })
public final class PlotCommand extends AnswerCommand {

    private static final int STEPS = 14;

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

    @Mixin
    private InstalledArguments installed = new InstalledArguments();

    @Option(names = "--svg", paramLabel = "FILE", description = "write the chart to this file")
    private @Nullable String svg;

    @Option(names = "--csv", description = "print the points as CSV")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public PlotCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        Installed system = installed.on(loop.find(in));
        if (svg != null) {
            PageFile.write(svg, system.chart().build().svg());
        }
        OperatingCurve curve = system.curve();
        UnitSystem units = system.line().system();
        Temperature coldest = system.coldest();
        Temperature hottest = system.hottest();
        List<OperatingPoint> points = curve.sample(coldest, hottest, STEPS);
        if (csv) {
            Csv.print(out, rows(points, system.band(), units));
            return;
        }
        out.println(curve.inUse().text(units));
        points.forEach(point -> out.println(point.text(units)));
        out.print(system.band().text(coldest, hottest, units));
        out.println(new ReliefOutlook(curve, system.valve(), Length.metres(0)).text(units));
        curve.cautions().forEach(caution -> out.println("! " + caution.text()));
        out.println(CARE);
    }

    private static List<List<String>> rows(List<OperatingPoint> points, OperatingBand band, UnitSystem system) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("temperature", "pressure", "lowest_normal", "highest_normal", "water_in_vessel", "state"));
        for (OperatingPoint point : points) {
            rows.add(List.of(
                    point.temperature().text(system),
                    text(point.pressure(), system),
                    text(band.lowest(point.temperature()).pressure(), system),
                    text(band.highest(point.temperature()).pressure(), system),
                    point.water().text(system),
                    point.state().toString()));
        }
        return rows;
    }

    private static String text(@Nullable GaugePressure pressure, UnitSystem system) {
        return pressure == null ? "" : pressure.text(system);
    }
}
