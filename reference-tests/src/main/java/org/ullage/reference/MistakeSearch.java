package org.ullage.reference;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names the mistake behind wrong answers: which known mistake would give the same ones. It says nothing unless nearly all answers agree
 * where the mistake shows, and unless so many agreements of different size are very unlikely to be chance: an implementation that is off by
 * rounding, by noise or by a factor of its own is not accused. Two mistakes at once hide one another.
 */
public final class MistakeSearch {

    /** Of the answers where a mistake shows, the share that must agree with it: a slip in one place may spoil a few. */
    private static final double NEARLY_ALL = 0.8;

    /** Probability of agreeing by chance above which nothing is said. */
    private static final double CHANCE = 1e-5;

    /** One size of error can be met by an unknown factor as well; several sizes cannot. */
    private static final int LEAST_SIZES = 2;

    private final Map<KnownMistake, Map<Question, Optional<Answer>>> wrongAnswers = new EnumMap<>(KnownMistake.class);

    MistakeSearch() {}

    /**
     * The mistakes that an implementation seems to make.
     *
     * @param report what it did
     * @return those that explain most answers first; empty if no case failed or none of the known mistakes explains the failures
     */
    public static List<Suspicion> in(ReferenceReport report) {
        return new MistakeSearch().among(List.of(KnownMistake.values()), report);
    }

    List<Suspicion> among(List<KnownMistake> mistakes, ReferenceReport report) {
        if (report.failures().isEmpty()) {
            return List.of();
        }
        List<Suspicion> all = mistakes.stream()
                .flatMap(mistake -> suspicion(mistake, report).stream())
                .sorted(Comparator.comparingInt(
                        suspicion -> -suspicion.agreeing().size()))
                .toList();
        return all.stream()
                .filter(each -> all.stream().noneMatch(other -> explainsMore(other, each)))
                .toList();
    }

    private Optional<Suspicion> suspicion(KnownMistake mistake, ReferenceReport report) {
        List<Sign> signs = report.results().stream()
                .flatMap(result -> sign(mistake, result).stream())
                .toList();
        List<Sign> agreeing = signs.stream().filter(Sign::agrees).toList();
        return agreeing.size() >= NEARLY_ALL * signs.size() && isNoChance(agreeing)
                ? Optional.of(new Suspicion(
                        mistake, agreeing.stream().map(Sign::result).toList(), signs.size()))
                : Optional.empty();
    }

    private Optional<Sign> sign(KnownMistake mistake, CaseResult result) {
        return wrongAnswers
                .computeIfAbsent(mistake, key -> new HashMap<>())
                .computeIfAbsent(result.referenceCase().question(), mistake::wrongAnswer)
                .flatMap(wrong -> Sign.of(wrong.si(), result));
    }

    /** Agreements of one size count once: the row of a table that weighs most says as much as all that are made with the same factor. */
    private static boolean isNoChance(List<Sign> agreeing) {
        Map<Long, Double> chanceBySize =
                agreeing.stream().collect(Collectors.toMap(Sign::size, Sign::chance, Math::min));
        return chanceBySize.size() >= LEAST_SIZES
                && chanceBySize.values().stream().reduce(1.0, (a, b) -> a * b) <= CHANCE;
    }

    private static boolean explainsMore(Suspicion other, Suspicion than) {
        Set<CaseResult> theirs = new HashSet<>(other.agreeing());
        return theirs.size() > than.agreeing().size() && theirs.containsAll(than.agreeing());
    }
}
