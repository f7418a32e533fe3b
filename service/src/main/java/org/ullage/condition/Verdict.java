package org.ullage.condition;

/** What a limit says of a value, from good to worst. */
public enum Verdict {
    /** Within the limit. */
    KEEP("keep"),
    /** Cannot be said from what was given. */
    UNDECIDED("undecided"),
    /** Not yet at its limit, but on the way: look again soon. */
    WATCH("watch"),
    /** Correct the treatment: inhibitor, concentration or water. */
    TREAT("treat"),
    /** Drain, flush and fill anew. */
    REPLACE("replace");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * The verdict for people.
     *
     * @return one word
     */
    public String word() {
        return word;
    }
}
