package org.ullage.reference;

import java.util.OptionalDouble;
import org.ullage.provenance.Provenance;

/**
 * What an implementation did in one case. Immutable.
 *
 * @param referenceCase the case
 * @param outcome how it did
 * @param computed its answer in coherent SI; empty if it gave none that can be compared
 * @param remark why it failed, the words of its refusal, or empty
 */
public record CaseResult(ReferenceCase referenceCase, Outcome outcome, OptionalDouble computed, String remark) {

    static CaseResult passed(ReferenceCase referenceCase, double computed) {
        return new CaseResult(referenceCase, Outcome.PASSED, OptionalDouble.of(computed), "");
    }

    static CaseResult passed(ReferenceCase referenceCase, String refusal) {
        return new CaseResult(referenceCase, Outcome.PASSED, OptionalDouble.empty(), refusal);
    }

    static CaseResult failed(ReferenceCase referenceCase, double computed, String why) {
        return new CaseResult(referenceCase, Outcome.FAILED, OptionalDouble.of(computed), why);
    }

    static CaseResult failed(ReferenceCase referenceCase, String why) {
        return new CaseResult(referenceCase, Outcome.FAILED, OptionalDouble.empty(), why);
    }

    static CaseResult notAnswered(ReferenceCase referenceCase) {
        return new CaseResult(referenceCase, Outcome.NOT_ANSWERED, OptionalDouble.empty(), "");
    }

    /**
     * The case's name.
     *
     * @return the id
     */
    public String id() {
        return referenceCase.id();
    }

    /**
     * How far the stated figure can be trusted.
     *
     * @return the provenance of its source
     */
    public Provenance provenance() {
        return referenceCase.source().provenance();
    }

    /**
     * The figure the source states, as printed.
     *
     * @return with its unit, or empty for a refusal
     */
    public String statedText() {
        Target stated = referenceCase.stated();
        return stated == null ? "" : stated.text();
    }

    /**
     * The tolerance on the stated figure.
     *
     * @return with its unit, or empty for a refusal
     */
    public String toleranceText() {
        Target stated = referenceCase.stated();
        return stated == null ? "" : stated.tolerance();
    }

    /**
     * The answer in the unit of the stated figure.
     *
     * @return with its unit; {@code refused}, or empty if there is none
     */
    public String computedText() {
        Target stated = referenceCase.stated();
        if (stated == null || computed.isEmpty()) {
            return referenceCase.verdict() == Verdict.REFUSED && outcome == Outcome.PASSED ? "refused" : "";
        }
        return stated.show(computed.getAsDouble());
    }

    /**
     * Answer less stated figure, in the unit of the stated figure.
     *
     * @return with its sign, or empty if there is none
     */
    public String differenceText() {
        Target stated = referenceCase.stated();
        return stated == null || computed.isEmpty() ? "" : stated.showDifference(computed.getAsDouble());
    }

    /**
     * How far the answer is from the figure that is right, as a share of it.
     *
     * @return zero or more, or empty if there is no such figure or no answer
     */
    public OptionalDouble relativeDeviation() {
        Target target = referenceCase.target();
        return target == null || computed.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(target.relativeDeviation(computed.getAsDouble()));
    }
}
