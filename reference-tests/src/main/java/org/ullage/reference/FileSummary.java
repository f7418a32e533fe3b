package org.ullage.reference;

import java.util.List;
import java.util.Locale;

/**
 * How the cases of one file went. Immutable.
 *
 * @param file its name
 * @param tally all its cases
 * @param agree passed, with the stated figure met
 * @param differ passed, with the stated figure missed and the corrected one met
 * @param refused passed, with the inputs refused
 * @param worst largest deviation of a passed case from the figure that is right, as a share of it; 0 if none has a figure
 */
public record FileSummary(String file, Tally tally, int agree, int differ, int refused, double worst) {

    /** Below this a deviation is the rounding of binary numbers. */
    private static final double ROUNDING = 1e-12;

    static FileSummary of(String file, List<CaseResult> results) {
        List<CaseResult> passed =
                results.stream().filter(r -> r.outcome() == Outcome.PASSED).toList();
        double worst = passed.stream()
                .flatMapToDouble(r -> r.relativeDeviation().stream())
                .max()
                .orElse(0);
        return new FileSummary(
                file,
                Tally.of(results),
                count(passed, Verdict.AGREES),
                count(passed, Verdict.DIFFERS),
                count(passed, Verdict.REFUSED),
                worst);
    }

    private static int count(List<CaseResult> results, Verdict verdict) {
        return (int) results.stream()
                .filter(result -> result.referenceCase().verdict() == verdict)
                .count();
    }

    /**
     * The largest deviation for people.
     *
     * @return two digits, {@code 0} for mere rounding of binary numbers, empty if every case is a refusal
     */
    public String worstText() {
        if (agree + differ == 0) {
            return "";
        }
        return worst < ROUNDING ? "0" : String.format(Locale.ROOT, "%.1e", worst);
    }
}
