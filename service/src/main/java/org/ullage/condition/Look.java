package org.ullage.condition;

import com.fasterxml.jackson.annotation.JsonValue;
import org.ullage.provenance.Source;

/** How a sample looks after standing for five minutes, and what that says. */
public enum Look {
    /** Clear, with or without a settled speck. */
    CLEAR("clear", Verdict.KEEP, "no sign of active corrosion", Signs.WATER_LOOK),
    /** The tint of the inhibitor as it was filled, clear. */
    AS_FILLED("tinted as filled", Verdict.KEEP, "the dye tells nothing of the inhibitor", Signs.JUDGEMENT),
    /** Yellow or brown. */
    YELLOW_BROWN(
            "yellow-brown",
            Verdict.TREAT,
            "active corrosion of iron: look for air drawn in at low pressure, frequent make-up, permeable pipe",
            Signs.WATER_LOOK),
    /** Black, with fine sludge. */
    BLACK(
            "black",
            Verdict.TREAT,
            "iron oxide from corrosion short of oxygen; hydrogen may gather at the vents: flush and keep air out",
            Signs.JUDGEMENT),
    /** Darkened glycol. */
    DARK(
            "darkened",
            Verdict.TREAT,
            "glycol overheated or oxidised: measure pH and reserve alkalinity",
            Signs.AGED_GLYCOL),
    /** Cloudy, slimy or with flakes. */
    CLOUDY("cloudy", Verdict.TREAT, "growth or inhibitor fallen out: measure the concentration", Signs.JUDGEMENT);

    @SuppressWarnings("ImmutableEnumChecker") // a record of immutable parts
    private final Observation observation;

    Look(String word, Verdict verdict, String meaning, Source source) {
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
     * @return such as {@code yellow-brown}
     */
    @JsonValue
    public String word() {
        return observation.word();
    }
}
