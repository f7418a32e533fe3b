package org.ullage.examples.compare;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.ullage.examples.file.BadFileException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the comparing commands share: where they print, and how a refusal ends them. */
abstract class CompareCommand implements Callable<Integer> {

    private static final int ANSWERED = 0;
    private static final int REFUSED = 1;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    /**
     * Prints the answer.
     *
     * @throws IllegalArgumentException if it is refused
     * @throws BadFileException if a file cannot be read
     */
    abstract void answer(PrintWriter out) throws BadFileException;

    @Override
    public final Integer call() {
        try {
            answer(spec.commandLine().getOut());
            return ANSWERED;
        } catch (IllegalArgumentException | BadFileException refusal) {
            spec.commandLine().getErr().println("ullage " + spec.name() + ": " + refusal.getMessage());
            return REFUSED;
        }
    }
}
