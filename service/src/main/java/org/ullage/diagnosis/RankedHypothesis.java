package org.ullage.diagnosis;

import java.io.Serializable;
import java.util.List;

/**
 * A hypothesis with what the evidence makes of it. Immutable.
 *
 * @param hypothesis what may be the matter
 * @param probability its share of belief, from 0 to 1; a judgement and no frequency that was measured
 * @param supports what speaks for it, the strongest first
 * @param contradicts what speaks against it, the strongest first
 */
public record RankedHypothesis(
        Hypothesis hypothesis, double probability, List<String> supports, List<String> contradicts)
        implements Serializable {

    private static final double ALMOST_ALL = 0.99;

    private static final double ALMOST_NOTHING = 0.01;

    /**
     * Copies the lists.
     *
     * @param hypothesis what may be the matter
     * @param probability its share of belief
     * @param supports what speaks for it
     * @param contradicts what speaks against it
     */
    public RankedHypothesis {
        supports = List.copyOf(supports);
        contradicts = List.copyOf(contradicts);
    }

    /**
     * The probability for people. Never more than a gauge can give.
     *
     * @return such as {@code 87 %}, {@code over 99 %} or {@code under 1 %}
     */
    public String percent() {
        if (probability > ALMOST_ALL) {
            return "over 99 %";
        }
        return probability < ALMOST_NOTHING ? "under 1 %" : Math.round(100 * probability) + " %";
    }

    /**
     * The hypothesis with its reasons for people.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder(hypothesis.word() + ", " + percent() + "\n");
        supports.forEach(reason -> text.append("    for:     ").append(reason).append('\n'));
        contradicts.forEach(
                reason -> text.append("    against: ").append(reason).append('\n'));
        return text.toString();
    }
}
