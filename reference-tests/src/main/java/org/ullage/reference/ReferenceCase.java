package org.ullage.reference;

import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * One reference case. Immutable.
 *
 * @param id unique name
 * @param file the file it stands in
 * @param question what is asked
 * @param verdict what is demanded
 * @param stated the figure as the source states it; null for a refusal
 * @param toleranceReason where the tolerance comes from
 * @param corrected the figure that is right; null unless the verdict is {@link Verdict#DIFFERS}
 * @param explanation why the stated figure is wrong, or why the inputs must be refused; may be empty if it agrees
 * @param source where the stated figure comes from
 */
public record ReferenceCase(
        String id,
        String file,
        Question question,
        Verdict verdict,
        @Nullable Target stated,
        String toleranceReason,
        @Nullable Target corrected,
        String explanation,
        Source source) {

    /**
     * Checks that the parts fit the verdict.
     *
     * @param id unique name
     * @param file the file it stands in
     * @param question what is asked
     * @param verdict what is demanded
     * @param stated the figure as the source states it
     * @param toleranceReason where the tolerance comes from
     * @param corrected the figure that is right
     * @param explanation why the stated figure is wrong, or why the inputs must be refused
     * @param source where the stated figure comes from
     * @throws IllegalArgumentException if they do not
     */
    public ReferenceCase {
        require(
                (stated == null) == (verdict == Verdict.REFUSED),
                "a stated figure is needed unless it is to be refused");
        require(
                (corrected != null) == (verdict == Verdict.DIFFERS),
                "a corrected figure belongs to a case that differs");
        require(
                stated == null || corrected == null || !stated.isMetBy(corrected.si()),
                "the corrected figure must lie outside the tolerance of the stated one");
        require(stated == null || !toleranceReason.isBlank(), "the tolerance needs its reason");
        require(
                verdict == Verdict.AGREES || !explanation.isBlank(),
                "a case that does not agree needs its explanation");
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(rule);
        }
    }

    /**
     * The figure that an answer must meet.
     *
     * @return the corrected one if there is one, else the stated one; null for a refusal
     */
    public @Nullable Target target() {
        return corrected == null ? stated : corrected;
    }
}
