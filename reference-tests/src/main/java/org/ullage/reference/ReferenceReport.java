package org.ullage.reference;

import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ullage.provenance.Provenance;

/**
 * What an implementation did in every case it was asked. Print it with {@link TextReport}, {@link MarkdownReport} or {@link
 * HtmlReport}. Immutable.
 *
 * @param results in the order of the cases
 */
public record ReferenceReport(List<CaseResult> results) {

    /**
     * Copies the results.
     *
     * @param results in the order of the cases
     */
    public ReferenceReport {
        results = List.copyOf(results);
    }

    /**
     * Whether nothing is wrong and something was answered.
     *
     * @return true if at least one case passed and none failed; questions that were left do not count
     */
    public boolean isClean() {
        Tally all = total();
        return all.passed() > 0 && all.failed() == 0;
    }

    /**
     * The cases that failed.
     *
     * @return in the order of the cases
     */
    public List<CaseResult> failures() {
        return results.stream()
                .filter(result -> result.outcome() == Outcome.FAILED)
                .toList();
    }

    /**
     * The passed cases whose stated figure is wrong.
     *
     * @return in the order of the cases
     */
    public List<CaseResult> misprints() {
        return results.stream()
                .filter(result -> result.referenceCase().verdict() == Verdict.DIFFERS)
                .filter(result -> result.outcome() == Outcome.PASSED)
                .toList();
    }

    /**
     * All cases together.
     *
     * @return the counts
     */
    public Tally total() {
        return Tally.of(results);
    }

    /**
     * The cases by what is asked.
     *
     * @return the counts, only of those that occur
     */
    public Map<Asked, Tally> byQuestion() {
        return tallies(result -> result.referenceCase().question().asked(), Asked.class);
    }

    /**
     * The cases by how far their stated figures can be trusted.
     *
     * @return the counts, only of those that occur
     */
    public Map<Provenance, Tally> byProvenance() {
        return tallies(CaseResult::provenance, Provenance.class);
    }

    /**
     * The cases by what they demand.
     *
     * @return the counts, only of those that occur
     */
    public Map<Verdict, Tally> byVerdict() {
        return tallies(result -> result.referenceCase().verdict(), Verdict.class);
    }

    /**
     * The cases by the file they stand in.
     *
     * @return a summary of each, in the order of the cases
     */
    public List<FileSummary> byFile() {
        Map<String, List<CaseResult>> files = results.stream()
                .collect(Collectors.groupingBy(
                        result -> result.referenceCase().file(), LinkedHashMap::new, Collectors.toList()));
        return files.entrySet().stream()
                .map(entry -> FileSummary.of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private <K extends Enum<K>> Map<K, Tally> tallies(Function<CaseResult, K> key, Class<K> type) {
        Map<K, Tally> tallies = new EnumMap<>(type);
        groups(key).forEach((group, members) -> tallies.put(group, Tally.of(members)));
        return tallies;
    }

    private <K> Map<K, ? extends Collection<CaseResult>> groups(Function<CaseResult, K> key) {
        return results.stream().collect(Collectors.groupingBy(key));
    }
}
