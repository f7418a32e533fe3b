package org.ullage.condition;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** What decides which limits apply to a loop's fluid. */
public enum LoopTrait {
    /** Inhibited propylene or ethylene glycol in water; without it the fluid is water. */
    GLYCOL("inhibited glycol"),
    /** A solar loop, which can stagnate. */
    SOLAR("solar loop"),
    /** Aluminium or its alloys touch the fluid. */
    ALUMINIUM("aluminium in the loop"),
    /** Run on desalinated water. */
    LOW_SALT("low-salt operation"),
    /** Run on water that keeps its salts. */
    SALINE("saline operation");

    private final String word;

    LoopTrait(String word) {
        this.word = word;
    }

    /** A copy that goes through the traits in the same order on every machine, so that stored answers repeat. */
    static Set<LoopTrait> inOrder(Set<LoopTrait> traits) {
        EnumSet<LoopTrait> copy = EnumSet.noneOf(LoopTrait.class);
        copy.addAll(traits);
        return Collections.unmodifiableSet(copy);
    }

    /**
     * The trait for people.
     *
     * @return such as {@code low-salt operation}
     */
    @JsonValue
    public String word() {
        return word;
    }
}
