package org.ullage.examples.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ullage.examples.file.BadFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What commands that answer one question share: where they print, how a refusal ends them, and the care that their readers owe. */
@Command(
        mixinStandardHelpOptions = true,
        usageHelpWidth = 100,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:answered",
            "1:what was asked for could not be found, read or answered; the error says why",
            "2:the command, the file or its header could not be read, or the output could not be written",
            "3:a fault of this program"
        },
        footer = {"", AnswerCommand.CARE})
public abstract class AnswerCommand implements Callable<Integer> {

    /** Said under every answer for people. */
    public static final String CARE =
            "Pressurised hot water can injure and a full vessel is heavy. Local codes, the makers' instructions and the"
                    + " judgement of a licensed person come before these numbers.";

    private static final int ANSWERED = 0;
    private static final int REFUSED = 1;
    private static final int UNREADABLE = 2;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line before anything runs
    private CommandSpec spec;

    /**
     * Prints the answer.
     *
     * @param out where to
     * @throws IllegalArgumentException if it is refused
     * @throws BadFileException if a file cannot be read
     */
    protected abstract void answer(PrintWriter out) throws BadFileException;

    @Override
    public final Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try {
            answer(out);
        } catch (BadFileException unreadable) {
            return complain(unreadable.getMessage(), UNREADABLE);
        } catch (IllegalArgumentException refusal) {
            return complain(refusal.getMessage(), REFUSED);
        }
        // A writer keeps silent about a reader that has gone.
        return out.checkError() ? complain("the answer could not be written to standard output", UNREADABLE) : ANSWERED;
    }

    private int complain(@Nullable String why, int status) {
        spec.commandLine().getErr().println("ullage " + spec.name() + ": " + why);
        return status;
    }
}
