package org.ullage.diagnosis;

import java.io.Serializable;
import java.util.Map;

/**
 * One piece of evidence and how likely each hypothesis makes it.
 *
 * @param words what was found
 * @param likelihoods how likely it is where a hypothesis is true, on one scale
 */
record Clue(String words, Map<Hypothesis, Double> likelihoods) implements Serializable {

    /** How the clue moves a hypothesis against the average of all: above 1 it speaks for it. */
    double factor(Hypothesis hypothesis, Map<Hypothesis, Double> priors) {
        double sum = 0;
        double weights = 0;
        for (Map.Entry<Hypothesis, Double> entry : priors.entrySet()) {
            sum += entry.getValue() * of(entry.getKey());
            weights += entry.getValue();
        }
        return of(hypothesis) * weights / sum;
    }

    double of(Hypothesis hypothesis) {
        return likelihoods.getOrDefault(hypothesis, 0.0);
    }
}
