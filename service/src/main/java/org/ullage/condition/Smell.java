package org.ullage.condition;

import com.fasterxml.jackson.annotation.JsonValue;
import org.ullage.provenance.Source;

/** How a sample smells, and what that says. */
public enum Smell {
    /** Of nothing. */
    NONE("none", Verdict.KEEP, "no sign of growth or overheating", Signs.JUDGEMENT),
    /** Burnt, sharp. */
    BURNT(
            "burnt",
            Verdict.REPLACE,
            "glycol overheated: acids have formed and the inhibitor is spent",
            Signs.AGED_GLYCOL),
    /** Mouldy or sour. */
    MOULDY("mouldy", Verdict.REPLACE, "growth in a mixture that is too weak", Signs.FIELD_CASE),
    /** Of bad eggs. */
    BAD_EGGS("bad eggs", Verdict.TREAT, "sulphate-reducing bacteria: have the fluid examined", Signs.JUDGEMENT);

    @SuppressWarnings("ImmutableEnumChecker") // a record of immutable parts
    private final Observation observation;

    Smell(String word, Verdict verdict, String meaning, Source source) {
        this.observation = new Observation(word, verdict, meaning, source);
    }

    /**
     * What it says.
     *
     * @return word, verdict, meaning and source
     */
    public Observation observation() {
        return observation;
    }

    /**
     * Its name for people and in files.
     *
     * @return such as {@code bad eggs}
     */
    @JsonValue
    public String word() {
        return observation.word();
    }
}
