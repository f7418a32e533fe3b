package org.ullage.reference;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * How often {@link MistakeSearch} is right about implementations of one kind, each of which answers another part of the questions.
 *
 * @param wrong what is wrong with them
 * @param failures cases that one of them fails if it answers all
 * @param named the mistakes named in each
 * @param unlisted the same if the search does not know the mistake that was made
 */
record MistakeTrial(String wrong, int failures, List<List<KnownMistake>> named, List<List<KnownMistake>> unlisted) {

    private static final int IMPLEMENTATIONS = 50;

    private static final long SEED = 20_251_125;

    private static final double LEAST_ANSWERED = 0.3;

    private static final List<ReferenceCase> CASES = ReferenceCases.all();

    private static final List<KnownMistake> ALL = List.of(KnownMistake.values());

    /** One for all trials: what a mistake answers is worked out once. */
    private static final MistakeSearch SEARCH = new MistakeSearch();

    static final Map<KnownMistake, MistakeTrial> SEEDED = seeded();

    static final List<MistakeTrial> BLAMELESS = Arrays.stream(OwnError.values())
            .map(error -> of(
                    error.toString(),
                    question -> new UllageImplementation().answer(error.understood(question)),
                    error,
                    ALL))
            .toList();

    private static Map<KnownMistake, MistakeTrial> seeded() {
        Map<KnownMistake, MistakeTrial> trials = new EnumMap<>(KnownMistake.class);
        ALL.forEach(mistake ->
                trials.put(mistake, of(mistake.toString(), mistake, OwnError.ROUNDED_OFF, without(mistake))));
        return trials;
    }

    private static List<KnownMistake> without(KnownMistake mistake) {
        return ALL.stream().filter(other -> other != mistake).toList();
    }

    private static MistakeTrial of(
            String wrong, ImplementationUnderTest implementation, OwnError error, List<KnownMistake> others) {
        Random random = new Random(SEED);
        ReferenceReport right = ReferenceRun.of(implementation, CASES);
        ReferenceReport whole = new ReferenceReport(right.results().stream()
                .map(result -> off(result, error.figure(random)))
                .toList());
        List<ReferenceReport> parts = Stream.generate(() -> part(right, error.figure(random), random))
                .limit(IMPLEMENTATIONS)
                .toList();
        List<List<KnownMistake>> named = search(ALL, parts);
        return new MistakeTrial(
                wrong, whole.failures().size(), named, others.equals(ALL) ? named : search(others, parts));
    }

    private static List<List<KnownMistake>> search(List<KnownMistake> mistakes, List<ReferenceReport> reports) {
        return reports.stream()
                .map(report -> SEARCH.among(mistakes, report).stream()
                        .map(Suspicion::mistake)
                        .toList())
                .toList();
    }

    private static ReferenceReport part(ReferenceReport report, DoubleUnaryOperator figure, Random random) {
        double share = LEAST_ANSWERED + (1 - LEAST_ANSWERED) * random.nextDouble();
        return new ReferenceReport(report.results().stream()
                .filter(result -> random.nextDouble() < share)
                .map(result -> off(result, figure))
                .toList());
    }

    private static CaseResult off(CaseResult result, DoubleUnaryOperator figure) {
        Target target = result.referenceCase().target();
        if (target == null || result.computed().isEmpty()) {
            return result;
        }
        double si = figure.applyAsDouble(result.computed().getAsDouble());
        Outcome outcome = target.isMetBy(si) ? Outcome.PASSED : Outcome.FAILED;
        return new CaseResult(result.referenceCase(), outcome, OptionalDouble.of(si), "");
    }

    /** In how many the mistake that was made was named, and no other. */
    long named(KnownMistake mistake) {
        return named.stream().filter(List.of(mistake)::equals).count();
    }

    /** In how many nothing was named. */
    long silent() {
        return named.stream().filter(List::isEmpty).count();
    }

    /** In how many something was named although the mistake that was made was not known. */
    long accusedUnlisted() {
        return unlisted.stream().filter(names -> !names.isEmpty()).count();
    }

    /** The table of the README. */
    static String table() {
        StringBuilder table = new StringBuilder("""
                | what is wrong | cases it fails | named | nothing named | another named | another named if its own is not on the list |
                | --- | --- | --- | --- | --- | --- |
                """);
        SEEDED.forEach((mistake, trial) -> {
            int failures = ReferenceRun.of(mistake, CASES).failures().size();
            table.append(trial.line(failures, trial.named(mistake), String.valueOf(trial.accusedUnlisted())));
        });
        BLAMELESS.forEach(trial -> table.append(trial.line(trial.failures(), 0, "")));
        return table.toString();
    }

    private String line(int failing, long rightly, String accusedUnlisted) {
        long another = IMPLEMENTATIONS - rightly - silent();
        return "| " + wrong + " | " + failing + " | " + rightly + " | " + silent() + " | " + another + " | "
                + accusedUnlisted + " |\n";
    }
}
