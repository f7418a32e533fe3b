package org.ullage.fuzz;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.ullage.examples.command.Converters;
import picocli.CommandLine;

/** Runs a command of the program in this process, with its file on standard input. */
final class Programs {

    private static final int ANSWERED = 0;
    private static final int SOME_REFUSED = 1;

    private Programs() {}

    static String run(Function<InputStream, Object> command, String file, String... arguments) {
        return run(command, file.getBytes(StandardCharsets.UTF_8), arguments);
    }

    /**
     * Runs it.
     *
     * @return what it printed
     * @throws Refused if the whole file was refused with a message
     */
    static String run(Function<InputStream, Object> command, byte[] file, String... arguments) {
        Object made = command.apply(new ByteArrayInputStream(file));
        CommandLine line = made instanceof CommandLine ready ? ready : new CommandLine(made);
        Converters.register(line);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        line.setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .setExecutionExceptionHandler((thrown, in, result) -> {
                    throw new Fault("undocumented " + thrown + " ends the program", thrown);
                });
        int status;
        try {
            status = line.execute(arguments);
        } catch (CommandLine.ExecutionException wrapped) {
            throw wrapped.getCause() instanceof Fault fault
                    ? fault
                    : new Fault("the program ended with " + wrapped, wrapped);
        }
        if (status == ANSWERED || (status == SOME_REFUSED && err.toString().isEmpty())) {
            return out.toString();
        }
        if (err.toString().isBlank() || err.toString().contains("\tat ")) {
            throw new Fault("status " + status + " without a reason: " + err);
        }
        throw new Refused(err.toString());
    }
}
