package org.ullage.examples.charge;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.charge.ChargeCheckSteps;
import org.ullage.charge.ChargeJob;
import org.ullage.charge.ChargePlan;
import org.ullage.charge.GaugeChoice;
import org.ullage.charge.VesselAcceptance;
import org.ullage.charge.VesselConnection;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.GaugeArguments;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.size.FoundLoop;
import org.ullage.method.Sizing;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command {@code charge}. */
@Command(
        name = "charge",
        description = {
            "Plans the charge and the fill of one loop of a file of loops, as its line is sized, for the temperatures of the"
                    + " day: the charge to set, the fill window, what the gauge should read after filling and when hot; what"
                    + " to do about a charge that was found; whether your gauge can tell; the steps of the check.",
            "",
            "Set and check the charge only with the water side isolated and drained to zero pressure."
        })
public final class ChargeCommand extends AnswerCommand {

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

    @Option(
            names = "--nominal",
            paramLabel = "VOLUME",
            required = true,
            description = "nominal volume of the vessel that was bought, or of several of one charge together")
    private Volume nominal = Volume.litres(0);

    @Option(names = "--air", paramLabel = "TEMPERATURE", required = true, description = "air, and so gas, on the day")
    private Temperature air = Temperature.celsius(0);

    @Option(
            names = "--water",
            paramLabel = "TEMPERATURE",
            required = true,
            description = "water the loop is filled with")
    private Temperature water = Temperature.celsius(0);

    @Option(
            names = "--fill",
            paramLabel = "PRESSURE",
            description = "fill pressure at the vessel; without it the lowest that keeps reserve and cold pressure")
    private @Nullable GaugePressure fill;

    @Option(
            names = "--gauge-above",
            paramLabel = "HEIGHT",
            description = "height of the loop's gauge above the vessel; negative if below; without it at one level")
    private @Nullable Length gaugeAbove;

    @Option(names = "--no-valve", description = "the vessel has no lockable valve with a drain; without this, it has")
    private boolean noValve;

    @Option(names = "--workings", description = "print the steps of the plan with formulas and sources")
    private boolean workings;

    @Option(names = "--csv", description = "print as CSV")
    private boolean csv;

    @ArgGroup(exclusive = false, multiplicity = "0..1")
    private @Nullable FoundArguments found;

    @ArgGroup(exclusive = false, multiplicity = "0..1")
    private @Nullable GaugeArguments gauge;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public ChargeCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        FoundLoop line = loop.find(in);
        Sizing sizing = line.size(line.method());
        ChargePlan plan = job(sizing).plan();
        Optional<GaugeChoice> choice = Optional.ofNullable(gauge)
                .map(given -> GaugeChoice.of(
                                given.gauge(), plan.toSet().pressure(), plan.hotPressure(), sizing.atmosphere())
                        .forVessel(VesselAcceptance.of(sizing, nominal)));
        if (csv) {
            Csv.print(out, ChargeSheet.rows(line.id(), plan, choice, line.system()));
        } else {
            print(out, plan, choice, line.system());
        }
    }

    private ChargeJob job(Sizing sizing) {
        ChargeJob job = ChargeJob.of(sizing, nominal, air, water);
        job = fill == null ? job : job.filledTo(fill);
        job = gaugeAbove == null ? job : job.gaugeAbove(gaugeAbove);
        return found == null ? job : job.found(found.pressure(), found.gas());
    }

    private void print(PrintWriter out, ChargePlan plan, Optional<GaugeChoice> choice, UnitSystem system) {
        out.print(plan.text(system));
        choice.ifPresent(given -> out.print("\n" + given.text(system)));
        out.println();
        VesselConnection connection =
                noValve ? VesselConnection.WITHOUT_VALVE : VesselConnection.LOCKABLE_VALVE_WITH_DRAIN;
        out.print(new ChargeCheckSteps(connection).text());
        if (workings) {
            out.print("\n" + plan.workings().text(system));
        }
        out.println(CARE);
    }
}
