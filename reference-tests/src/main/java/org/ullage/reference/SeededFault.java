package org.ullage.reference;

import java.util.Set;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Hypothesis;

/** What is put wrong in a synthetic system, and which verdicts name it. */
public enum SeededFault {
    /** Nothing. */
    HEALTHY("healthy", Set.of(Hypothesis.HEALTHY)),
    /** Half of the gas is gone, and the loop was topped up to its fill pressure. */
    HALF_LOST("half of the gas lost", Set.of(Hypothesis.LOW_CHARGE)),
    /** 5 % of the gas is left, and the loop was topped up to its fill pressure; both verdicts say that the vessel has failed. */
    WATERLOGGED("5 % of the gas left", Set.of(Hypothesis.WATERLOGGED, Hypothesis.LOW_CHARGE)),
    /** The vessel holds 30 % more gas than wanted. */
    OVER_CHARGED("30 % too much gas", Set.of(Hypothesis.OVER_CHARGED)),
    /** Cold, the pressure is above the fill window. */
    OVER_FILLED("over-filled", Set.of(Hypothesis.OVER_FILLED, Hypothesis.FEED_PASSING)),
    /** Cold, the pressure is below the charge: the vessel is empty. */
    SHORT_OF_WATER("short of water", Set.of(Hypothesis.SHORT_OF_WATER)),
    /** Air stands in the loop, 30 to 100 % of what the vessel holds. */
    AIR_IN_LOOP("air in the loop", Set.of(Hypothesis.AIR_IN_LOOP)),
    /** The vessel has a third to two thirds of the volume that the loop needs. */
    UNDERSIZED("undersized", Set.of(Hypothesis.UNDERSIZED));

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // an immutable set
    private final Set<Hypothesis> names;

    SeededFault(String words, Set<Hypothesis> names) {
        this.words = words;
        this.names = names;
    }

    /**
     * Whether a hypothesis names this fault; a feed that passes and a loop over-filled read the same until the feed is shut.
     *
     * @param hypothesis the likeliest one
     * @return whether it does
     */
    public boolean isNamedBy(Hypothesis hypothesis) {
        return names.contains(hypothesis);
    }

    /**
     * Whether a verdict names this fault: by its hypothesis, or by the family of hypotheses that call for the same first step.
     *
     * @param diagnosis a diagnosis
     * @return whether it is decided and right
     */
    public boolean isNamedBy(Diagnosis diagnosis) {
        Hypothesis first = diagnosis.likeliest().hypothesis();
        return diagnosis.isNamed()
                ? isNamedBy(first)
                : diagnosis.decided() && names.stream().anyMatch(name -> name.family() == first.family());
    }

    /**
     * The fault in words.
     *
     * @return such as {@code half of the gas lost}
     */
    @Override
    public String toString() {
        return words;
    }
}
