package org.ullage.reference;

import java.util.List;

/**
 * That an implementation makes a known mistake. Immutable.
 *
 * @param mistake which
 * @param agreeing the answers that agree with those of an implementation which makes it; each of them is wrong
 * @param shown how many answers there are where the mistake shows
 */
public record Suspicion(KnownMistake mistake, List<CaseResult> agreeing, int shown) {

    /**
     * Copies the answers.
     *
     * @param mistake which
     * @param agreeing the answers that agree
     * @param shown how many answers there are where the mistake shows
     */
    public Suspicion {
        agreeing = List.copyOf(agreeing);
    }

    /**
     * The suspicion as a sentence.
     *
     * @return such as {@code your answers agree with those of an implementation that loses the pipe term: 9 of the 9 where that shows}
     */
    @Override
    public String toString() {
        return "your answers agree with those of an implementation that " + mistake + ": " + agreeing.size()
                + " of the " + shown + " where that shows";
    }
}
