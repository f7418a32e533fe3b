package org.ullage.diagnosis;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/**
 * What two readings and the signs of a visit say of a vessel: hypotheses ranked by likelihood, with what speaks for and against each
 * and what to measure next. A change of pressure with temperature alone is no sign of failure. Immutable.
 *
 * <p>Belief follows Bayes' rule: prior times the likelihood of each clue. The swing, the cold pressure and the charge have
 * likelihoods from physics and the errors of the instruments; priors and signs are judgements of this library, see {@link
 * #judgementSource()}.
 *
 * @param system what was installed
 * @param evidence what was found
 * @param gasLeft the gas that is left, straight from the readings; null if they do not give it
 * @param ranking all hypotheses, the likeliest first
 * @param decided whether the evidence could show a loss of gas and the family of the likeliest is likely enough to act on
 * @param nextStep what to measure next to tell the two likeliest apart
 */
public record Diagnosis(
        InstalledSystem system,
        Evidence evidence,
        @Nullable GasLeft gasLeft,
        List<RankedHypothesis> ranking,
        boolean decided,
        String nextStep)
        implements Serializable {

    private static final Constant ENOUGH = new Constant("enough", 0.9, "1", LikelihoodTable.SOURCE);

    private static final Constant SPEAKS_FOR = new Constant("factor", 1.5, "1", LikelihoodTable.SOURCE);

    private static final Constant SHOWN = new Constant("shown", 0.01, "1", LikelihoodTable.SOURCE);

    private static final Source CARE = Source.commonPractice("usual care on pressurised loops");

    private static final List<Caution> CAUTIONS = List.of(
            new Caution("A change of pressure with temperature alone is no sign of failure.", CARE),
            new Caution(
                    "A gauge gives likelihoods, not certainty: before a vessel is replaced, isolate it, drain its water side to zero"
                            + " pressure and measure the charge.",
                    CARE),
            new Caution(
                    "The loop is hot and under pressure, and a waterlogged vessel is heavy: local codes, the makers' instructions and"
                            + " the judgement of a licensed person come before this.",
                    CARE));

    /**
     * Copies the ranking.
     *
     * @param system what was installed
     * @param evidence what was found
     * @param gasLeft the gas that is left, or null
     * @param ranking all hypotheses
     * @param decided whether the likeliest is likely enough
     * @param nextStep what to measure next
     */
    public Diagnosis {
        ranking = List.copyOf(ranking);
    }

    /**
     * Weighs the evidence.
     *
     * @param system what was installed
     * @param evidence what was found
     * @return the diagnosis
     * @throws org.ullage.quantity.OutOfRangeException if a reading is outside the range of the fluid, or the numbers are so
     *     extreme that no belief comes out
     */
    public static Diagnosis of(InstalledSystem system, Evidence evidence) {
        Weighing weighing = new Weighing(system, evidence);
        Map<Hypothesis, Double> probabilities = weighing.probabilities();
        List<RankedHypothesis> ranking = Arrays.stream(Hypothesis.values())
                .map(hypothesis -> new RankedHypothesis(
                        hypothesis,
                        probabilities.getOrDefault(hypothesis, 0.0),
                        reasons(weighing, hypothesis, true),
                        reasons(weighing, hypothesis, false)))
                .sorted(Comparator.comparingDouble(RankedHypothesis::probability)
                        .reversed())
                .toList();
        RankedHypothesis first = ranking.get(0);
        RankedHypothesis second = ranking.get(1);
        return new Diagnosis(
                system,
                evidence,
                GasLeft.of(system, evidence).orElse(null),
                ranking,
                weighing.tells() && belief(ranking, first.hypothesis().family()) >= ENOUGH.value(),
                new NextStep(system, evidence, weighing).between(first.hypothesis(), second.hypothesis()));
    }

    /** The clues that move a hypothesis up, or those that move it down, the strongest first. */
    private static List<String> reasons(Weighing weighing, Hypothesis hypothesis, boolean up) {
        Map<Hypothesis, Double> priors = weighing.priors();
        Comparator<Clue> weakestFirst = Comparator.comparingDouble(clue -> clue.factor(hypothesis, priors));
        return weighing.clues().stream()
                .filter(clue -> up
                        ? clue.factor(hypothesis, priors) > SPEAKS_FOR.value()
                        : clue.factor(hypothesis, priors) < 1 / SPEAKS_FOR.value())
                .sorted(up ? weakestFirst.reversed() : weakestFirst)
                .map(Clue::words)
                .toList();
    }

    private static double belief(List<RankedHypothesis> ranking, Family family) {
        return ranking.stream()
                .filter(ranked -> ranked.hypothesis().family() == family)
                .mapToDouble(RankedHypothesis::probability)
                .sum();
    }

    /**
     * The belief in a family of hypotheses.
     *
     * @param family hypotheses that call for the same first step
     * @return their probabilities together, from 0 to 1
     */
    public double belief(Family family) {
        return belief(ranking, family);
    }

    /**
     * Whether one hypothesis is decided on, and not only its family.
     *
     * @return whether it is likely enough by itself
     */
    public boolean isNamed() {
        return decided && likeliest().probability() >= ENOUGH.value();
    }

    /**
     * The likeliest hypothesis.
     *
     * @return the first of the ranking
     */
    public RankedHypothesis likeliest() {
        return ranking.get(0);
    }

    /**
     * Where the priors and the weight of signs come from.
     *
     * @return the source, which says that they are judgements
     */
    public static Source judgementSource() {
        return LikelihoodTable.SOURCE;
    }

    /**
     * What to mind.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return CAUTIONS;
    }

    /**
     * The diagnosis in one sentence.
     *
     * @return what it is most likely, or that the evidence cannot decide
     */
    public String verdict() {
        RankedHypothesis first = likeliest();
        String two = named(first) + " or " + named(ranking.get(1));
        if (!decided) {
            return "The evidence cannot decide: " + two + ".";
        }
        return isNamed()
                ? "Most likely " + named(first) + ": " + first.hypothesis().remedy() + "."
                : "Most likely " + first.hypothesis().family().words() + ", " + two + ": "
                        + first.hypothesis().remedy() + ".";
    }

    private static String named(RankedHypothesis ranked) {
        return ranked.hypothesis().word() + " (" + ranked.percent() + ")";
    }

    /**
     * The diagnosis for people.
     *
     * @param units metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem units) {
        StringBuilder text = new StringBuilder(verdict()).append('\n');
        text.append(
                gasLeft == null
                        ? "the readings do not give the gas that is left: the hot pressure is not above the cold one\n"
                        : gasLeft.text(units) + "\n");
        text.append("next: ").append(nextStep).append('\n');
        ranking.stream()
                .filter(ranked -> ranked.probability() >= SHOWN.value())
                .forEach(ranked -> text.append("  ").append(ranked.text()));
        text.append("Likelihoods are judgements: ")
                .append(LikelihoodTable.SOURCE)
                .append('\n');
        CAUTIONS.forEach(caution -> text.append("- ").append(caution.text()).append('\n'));
        return text.toString();
    }
}
