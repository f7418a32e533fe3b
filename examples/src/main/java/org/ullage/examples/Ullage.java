package org.ullage.examples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.ullage.examples.charge.ChargeCommand;
import org.ullage.examples.choose.ChooseCommand;
import org.ullage.examples.command.Converters;
import org.ullage.examples.compare.ExplainCommand;
import org.ullage.examples.compare.FluidsCommand;
import org.ullage.examples.compare.MethodsCommand;
import org.ullage.examples.contents.ContentsCommand;
import org.ullage.examples.demo.DemoCommand;
import org.ullage.examples.records.RecordCommand;
import org.ullage.examples.service.DiagnoseCommand;
import org.ullage.examples.service.PlotCommand;
import org.ullage.examples.size.SizeCommand;
import org.ullage.examples.support.SupportCommand;
import org.ullage.examples.sweep.SweepCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line. */
@Command(
        name = "ullage",
        description = {
            "Sizes expansion vessels of closed heating and cooling loops.",
            "",
            "The answer is a calculation. Local codes, the instructions of the makers and the judgement of a licensed person"
                    + " come before it."
        },
        synopsisSubcommandLabel =
                "(charge | choose | contents | demo | diagnose | explain | fluids | methods | plot | record | size | support)",
        subcommands = {DemoCommand.class},
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        versionProvider = Version.class,
        exitCodeOnExecutionException = Ullage.PROGRAM_FAULT,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:everything was answered",
            "1:something asked for could not be answered; its error says why",
            "2:nothing was done: the command, the file or its header could not be read",
            "3:a fault of this program; the trace on standard error belongs in a report"
        },
        footer = {"", "More on a command: ullage size --help"})
public final class Ullage implements Runnable {

    static final int PROGRAM_FAULT = 3;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    /**
     * Runs the program and ends with its exit status.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        // Digits and words look the same everywhere, and a failed write is noticed, which System.out would hide.
        Locale.setDefault(Locale.ROOT);
        int status = run(
                arguments,
                System.in,
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err));
        System.exit(status);
    }

    /**
     * Runs the program. All text is UTF-8, whatever the locale.
     *
     * @param arguments the command line
     * @param in standard input
     * @param out standard output
     * @param err standard error
     * @return the exit status
     */
    static int run(String[] arguments, InputStream in, OutputStream out, OutputStream err) {
        PrintWriter answers = utf8(out);
        PrintWriter complaints = utf8(err);
        CommandLine line = new CommandLine(new Ullage())
                .addSubcommand(new ChargeCommand(in))
                .addSubcommand(new ChooseCommand(in))
                .addSubcommand(new ContentsCommand(in))
                .addSubcommand(new DiagnoseCommand(in))
                .addSubcommand(new ExplainCommand(in))
                .addSubcommand(new FluidsCommand(in))
                .addSubcommand(new MethodsCommand(in))
                .addSubcommand(new PlotCommand(in))
                .addSubcommand(new RecordCommand(in))
                .addSubcommand(SizeCommand.reading(in))
                .addSubcommand(new SupportCommand(in))
                .addSubcommand(new SweepCommand(in))
                .setOut(answers)
                .setErr(complaints)
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(Ullage::explain);
        Converters.register(line);
        int status = line.execute(arguments);
        answers.flush();
        complaints.flush();
        return status;
    }

    private static int explain(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(problem.getMessage());
        err.println("Help: " + command.getCommandSpec().qualifiedName() + " --help");
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }

    /** Without a command there is nothing to do. */
    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "Say what to do: charge, choose, contents, demo, diagnose, explain, fluids, methods, plot, record, size, support or sweep.");
    }
}
