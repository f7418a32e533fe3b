package org.ullage.reference;

import java.util.Optional;

/**
 * One answer where a mistake shows: the mistake's answer lies clearly beside the right figure.
 *
 * @param result the answer
 * @param size of the error that the mistake makes, as a step of a logarithmic scale: errors of one step cannot be told apart
 * @param agrees whether the answer is the mistake's
 * @param chance of agreeing as closely if the answer were anywhere between the right one and as far beyond the mistake's
 */
record Sign(CaseResult result, long size, boolean agrees, double chance) {

    /** So many tolerances from the right figure no allowed deviation leads to. */
    private static final double CLEARLY = 4;

    /** An answer that is not the right one is the mistake's if it is this much of the error beside it: other water, other rounding. */
    private static final double CLOSE = 0.05;

    /** Empty where there is nothing to compare, or the mistake does not show. */
    static Optional<Sign> of(double wrong, CaseResult result) {
        Target target = result.referenceCase().target();
        if (target == null
                || result.computed().isEmpty()
                || Math.abs(wrong - target.si()) <= CLEARLY * target.toleranceSi()) {
            return Optional.empty();
        }
        return Optional.of(compare(result, target, wrong, result.computed().getAsDouble()));
    }

    private static Sign compare(CaseResult result, Target target, double wrong, double computed) {
        double error = Math.abs(wrong - target.si());
        double beside = Math.abs(computed - wrong);
        long size = Math.round(Math.log(error / Math.abs(target.si())) / CLOSE);
        boolean agrees = beside <= Math.max(target.toleranceSi(), CLOSE * error);
        return new Sign(result, size, agrees, Math.max(target.toleranceSi(), beside) / error);
    }
}
