package org.ullage.reference;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts the cases to an implementation and judges its answers. */
public final class ReferenceRun {

    private ReferenceRun() {}

    /**
     * Runs every case that ships with this module.
     *
     * @param implementation the calculation to check
     * @return what it did in each case
     */
    public static ReferenceReport of(ImplementationUnderTest implementation) {
        return of(implementation, ReferenceCases.all());
    }

    /**
     * Runs chosen cases.
     *
     * @param implementation the calculation to check
     * @param cases the cases, such as a part of {@link ReferenceCases#all()} or your own
     * @return what it did in each case
     */
    public static ReferenceReport of(ImplementationUnderTest implementation, List<ReferenceCase> cases) {
        return new ReferenceReport(cases.stream()
                .map(referenceCase -> run(implementation, referenceCase))
                .toList());
    }

    private static CaseResult run(ImplementationUnderTest implementation, ReferenceCase referenceCase) {
        Optional<Answer> answer;
        try {
            answer = implementation.answer(referenceCase.question());
        } catch (IllegalArgumentException refusal) {
            return judgeRefusal(referenceCase, String.valueOf(refusal.getMessage()));
        } catch (RuntimeException breakdown) {
            return CaseResult.failed(referenceCase, "broke down: " + breakdown);
        }
        return answer.map(given -> judge(referenceCase, given)).orElseGet(() -> CaseResult.notAnswered(referenceCase));
    }

    private static CaseResult judgeRefusal(ReferenceCase referenceCase, String words) {
        return referenceCase.verdict() == Verdict.REFUSED
                ? CaseResult.passed(referenceCase, words)
                : CaseResult.failed(referenceCase, "refused: " + words);
    }

    private static CaseResult judge(ReferenceCase referenceCase, Answer answer) {
        Measure measure = referenceCase.question().asked().measure();
        double si = answer.si();
        Target stated = referenceCase.stated();
        Target target = referenceCase.target();
        if (stated == null || target == null) {
            return CaseResult.failed(referenceCase, "answered where it must refuse: " + referenceCase.explanation());
        }
        if (!answer.isA(measure)) {
            return CaseResult.failed(
                    referenceCase, "answered with " + answer.typeName() + ", not " + measure.typeName());
        }
        if (!Double.isFinite(si)) {
            return CaseResult.failed(referenceCase, "answered with " + si);
        }
        String fault = fault(stated, referenceCase.corrected(), si);
        return fault.isEmpty() ? CaseResult.passed(referenceCase, si) : CaseResult.failed(referenceCase, si, fault);
    }

    private static String fault(Target stated, @Nullable Target corrected, double si) {
        if (corrected == null) {
            return stated.isMetBy(si) ? "" : misses(stated, si);
        }
        if (stated.isMetBy(si)) {
            return "repeats the stated " + stated.text() + ", which is wrong; right is " + corrected.text();
        }
        return corrected.isMetBy(si) ? "" : misses(corrected, si);
    }

    private static String misses(Target target, double si) {
        return "gives " + target.show(si) + ", which is " + target.showDifference(si) + " from " + target.text()
                + " (tolerance " + target.tolerance() + ")";
    }
}
