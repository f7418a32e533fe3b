package org.ullage.examples.support;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.ullage.examples.command.AnswerCommand;
import org.ullage.examples.command.Csv;
import org.ullage.examples.file.BadFileException;
import org.ullage.examples.file.InputFile;
import org.ullage.examples.file.SheetFile;
import org.ullage.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command {@code support}. */
@Command(
        name = "support",
        description = {
            "Weighs the vessels of a CSV file empty and waterlogged and checks what holds them and how they may be taken off.",
            "",
            "Columns: id, nominal; empty_mass (the plate's) or rating (the shell is then estimated); fluid_density (cold water if"
                    + " blank). Hung on a pipe stub: stub_standard, stub_size, stub_arm (off the stub's axis), stub_threaded (yes"
                    + " or no). On a bracket: bracket_arm (wall to centre of gravity), bracket_rows (between the anchor rows),"
                    + " top_anchors, all_anchors, anchor_tension, anchor_shear (allowable for one anchor, from its maker). In an"
                    + " earthquake: s_ds, i_p, z_over_h (ASCE 7-05 to 7-16). Taken off by hand: lift_reach, lift_from, lift_to"
                    + " (hands before the ankles, above the floor).",
            "",
            "What a line does not give is not checked. A failed check is an answer and no error."
        })
public final class SupportCommand extends AnswerCommand {

    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "the CSV file; - reads standard input")
    private String file = InputFile.STANDARD_INPUT;

    @Option(names = "--workings", description = "print the steps of each check with formulas and sources")
    private boolean workings;

    @Option(names = "--csv", description = "print as CSV, a row for each check")
    private boolean csv;

    private long refused;

    /**
     * Makes the command.
     *
     * @param in standard input
     */
    public SupportCommand(InputStream in) {
        this.in = in;
    }

    @Override
    protected void answer(PrintWriter out) throws BadFileException {
        List<SupportLine> lines = new InputFile(file, in)
                .read(stream -> SheetFile.read(stream, SupportColumns.ALL).stream()
                        .map(SupportLine::new)
                        .toList());
        List<List<String>> rows = new ArrayList<>(List.of(SupportSheet.HEADER));
        for (SupportLine line : lines) {
            try {
                SupportAnswer answer = SupportAnswer.of(line);
                rows.addAll(SupportSheet.rows(line, answer));
                if (!csv) {
                    print(out, line, answer);
                }
            } catch (IllegalArgumentException refusal) {
                refused++;
                rows.add(SupportSheet.refusal(line, String.valueOf(refusal.getMessage())));
                if (!csv) {
                    out.println(line.id() + ": " + refusal.getMessage() + "\n");
                }
            }
        }
        if (csv) {
            Csv.print(out, rows);
        } else {
            out.println(CARE);
        }
        if (refused > 0) {
            throw new IllegalArgumentException(
                    refused + " of " + lines.size() + " lines could not be read; their errors say why");
        }
    }

    private void print(PrintWriter out, SupportLine line, SupportAnswer answer) {
        UnitSystem system = line.system();
        out.println(line.id());
        answer.texts(system).forEach(text -> print(out, text));
        if (workings) {
            answer.workings().forEach(steps -> print(out, steps.text(system)));
        }
        answer.cautions().forEach(caution -> out.println("  ! " + caution.text()));
        out.println();
    }

    private static void print(PrintWriter out, String text) {
        text.lines().forEach(one -> out.println("  " + one));
    }
}
