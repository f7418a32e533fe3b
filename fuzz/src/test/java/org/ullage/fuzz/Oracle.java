package org.ullage.fuzz;

import java.util.regex.Pattern;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnreadableQuantityException;

/** Tells an answer from a refusal and both from a fault. */
final class Oracle {

    /** A refusal is read by people; one that echoes an input without end is a fault. */
    private static final int LONGEST_REFUSAL = 4_000;

    /** What an input held is repeated in quotes and may be anything. */
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*+\"");

    /** A missing value that was printed as if it were there; a list may hold null and nothing else. */
    private static final Pattern NULL = Pattern.compile("\\bnull\\b.|.\\bnull\\b");

    private Oracle() {}

    /** What became of a case that was no fault. */
    enum Verdict {
        ANSWERED,
        REFUSED
    }

    /**
     * Puts a case to a target.
     *
     * @throws Fault if the answer has a number that is not finite, or the exception is none of the documented ones
     */
    static Verdict judge(Target target, Draw draw) {
        try {
            Finite.check(target.ask(draw));
            return Verdict.ANSWERED;
        } catch (Fault fault) {
            throw fault;
        } catch (Throwable thrown) {
            requireDocumented(thrown);
            return Verdict.REFUSED;
        }
    }

    /** Whether the exception is one of those that the library documents. */
    static boolean isRefusal(Throwable thrown) {
        return thrown instanceof OutOfRangeException
                || thrown instanceof MissingInputException
                || thrown instanceof UnreadableQuantityException
                || thrown instanceof Refused;
    }

    /**
     * Passes a documented refusal that says what it must.
     *
     * @throws Fault if it is another exception or its message lacks something
     */
    static void requireDocumented(Throwable thrown) {
        if (!isRefusal(thrown)) {
            throw new Fault("undocumented " + thrown, thrown);
        }
        String message = String.valueOf(thrown.getMessage());
        if (message.length() > LONGEST_REFUSAL) {
            throw new Fault("a refusal of " + message.length() + " characters", thrown);
        }
        if (thrown instanceof OutOfRangeException outside) {
            requireWords("quantity", outside.quantity(), thrown);
            requireWords("value", outside.value(), thrown);
            requireWords("allowed range", outside.allowed(), thrown);
            requireWords("remedy", outside.remedy(), thrown);
        } else if (thrown instanceof MissingInputException missing) {
            requireWords("input", missing.input(), thrown);
        } else if (thrown instanceof UnreadableQuantityException unreadable) {
            requireWords("quantity", unreadable.quantity(), thrown);
        }
    }

    private static void requireWords(String what, String words, Throwable refusal) {
        if (words == null
                || words.isBlank()
                || NULL.matcher(QUOTED.matcher(words).replaceAll("")).find()) {
            throw new Fault("a refusal without its " + what + ": " + refusal.getMessage(), refusal);
        }
    }
}
