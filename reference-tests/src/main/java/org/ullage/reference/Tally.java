package org.ullage.reference;

import java.util.Collection;

/**
 * How many cases of a group went how. Immutable.
 *
 * @param cases all of them
 * @param passed as demanded
 * @param failed not as demanded
 * @param notAnswered left by the implementation
 */
public record Tally(int cases, int passed, int failed, int notAnswered) {

    static Tally of(Collection<CaseResult> results) {
        return new Tally(
                results.size(),
                count(results, Outcome.PASSED),
                count(results, Outcome.FAILED),
                count(results, Outcome.NOT_ANSWERED));
    }

    private static int count(Collection<CaseResult> results, Outcome outcome) {
        return (int)
                results.stream().filter(result -> result.outcome() == outcome).count();
    }

    /**
     * One line for people.
     *
     * @return such as {@code 40 cases: 39 passed, 1 failed, 0 not answered}
     */
    @Override
    public String toString() {
        return cases + " cases: " + passed + " passed, " + failed + " failed, " + notAnswered + " not answered";
    }
}
