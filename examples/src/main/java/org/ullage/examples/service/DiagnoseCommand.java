package org.ullage.examples.service;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.MeasuredCharge;
import org.ullage.diagnosis.RankedHypothesis;
import org.ullage.diagnosis.Sign;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.command.GaugeArguments;
import org.ullage.examples.command.LoopArguments;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.PageFile;
import org.ullage.examples.size.FoundLoop;
import org.ullage.operation.Reading;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.report.Chart;
import org.ullage.report.DiagnosisReport;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code diagnose}. */
@Command(
        name = "diagnose",
        description = {
            "Is the vessel still good? Two readings, cold and hot, and what was seen on the visit, held against what was"
                    + " installed: how much gas is left, what may be the matter with what speaks for and against it, and what"
                    + " to measure next. Nothing may be filled, vented or drained between the readings.",
            "",
            "It says so when the readings cannot decide, and never claims a certainty that a gauge cannot give."
        })
public final class DiagnoseCommand extends AnswerCommand {

    private final InputStream in;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private LoopArguments loop = new LoopArguments();

    @Mixin
    private InstalledArguments installed = new InstalledArguments();

    @Mixin
    private ReadingArguments readings = new ReadingArguments();

    @ArgGroup(exclusive = false, multiplicity = "1")
    private GaugeArguments gauge = new GaugeArguments();

    @Option(
            names = "--sign",
            paramLabel = "SIGN",
            split = ",",
            description = "what was seen, such as relief-drips-hot or dull-all-over; a wrong word lists them all")
    private List<String> signs = new ArrayList<>();

    @Option(
            names = "--measured",
            paramLabel = "PRESSURE",
            description = "charge measured with the water side drained to zero pressure; needs --measured-at")
    private @Nullable GaugePressure measured;

    @Option(names = "--measured-at", paramLabel = "TEMPERATURE", description = "temperature of the shell then")
    private @Nullable Temperature measuredAt;

    @Option(names = "--html", paramLabel = "FILE", description = "write the page with its chart to this file")
    private @Nullable String html;

    @Option(names = "--csv", description = "print the hypotheses as CSV")
    private boolean csv;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public DiagnoseCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        Installed system = installed.on(loop.find(in));
        FoundLoop line = system.line();
        Diagnosis diagnosis = Diagnosis.of(installed.system(system), evidence());
        if (html != null) {
            Chart chart = system.chart().with(readings(diagnosis)).build();
            PageFile.write(
                    html, DiagnosisReport.of(diagnosis, chart, line.system()).html());
        }
        if (csv) {
            Csv.print(out, rows(line.id(), diagnosis));
        } else {
            out.print(diagnosis.text(line.system()));
            out.println(CARE);
        }
    }

    private static List<Reading> readings(Diagnosis diagnosis) {
        return List.of(
                diagnosis.evidence().cold().reading(),
                diagnosis.evidence().hot().reading());
    }

    private Evidence evidence() {
        Evidence evidence = readings.evidence(gauge.gauge());
        for (String word : signs) {
            evidence = evidence.with(sign(word.strip()));
        }
        if (measured == null) {
            return evidence;
        }
        if (measuredAt == null) {
            throw new IllegalArgumentException(
                    "--measured needs --measured-at: a charge means nothing without the temperature of its gas");
        }
        return evidence.with(
                new MeasuredCharge(measured, measuredAt, gauge.gauge().errorAt(measured)));
    }

    private static Sign sign(String word) {
        return Arrays.stream(Sign.values())
                .filter(one -> word(one).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("--sign \"" + word + "\" is not known; known are "
                        + Arrays.stream(Sign.values())
                                .map(DiagnoseCommand::word)
                                .collect(Collectors.joining(", "))));
    }

    private static String word(Sign sign) {
        return sign.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<List<String>> rows(String id, Diagnosis diagnosis) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("id", "decided", "hypothesis", "belief", "for", "against", "remedy", "next"));
        for (RankedHypothesis ranked : diagnosis.ranking()) {
            rows.add(List.of(
                    id,
                    diagnosis.decided() ? "yes" : "no",
                    ranked.hypothesis().word(),
                    ranked.percent(),
                    String.join(" | ", ranked.supports()),
                    String.join(" | ", ranked.contradicts()),
                    ranked.hypothesis().remedy(),
                    diagnosis.nextStep()));
        }
        return rows;
    }
}
