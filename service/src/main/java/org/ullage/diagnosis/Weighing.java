package org.ullage.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.ullage.operation.Reading;
import org.ullage.provenance.Constant;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/** Weighs the hypotheses: prior times the likelihood of every clue, by Bayes' rule, the clues taken as independent. */
final class Weighing {

    /** A temperature outside the design range is the loop's own fault far more often than that of the readings. */
    private static final Constant STRAY = new Constant("stray", 0.05, "1", LikelihoodTable.SOURCE);

    private final InstalledSystem system;
    private final Evidence evidence;
    private final Map<Hypothesis, double[]> gas = new EnumMap<>(Hypothesis.class);
    private final Map<Hypothesis, Double> priors = new EnumMap<>(Hypothesis.class);
    private final List<Clue> clues = new ArrayList<>();
    private final SwingLikelihood swingLikelihood;

    Weighing(InstalledSystem system, Evidence evidence) {
        this.system = system;
        this.evidence = evidence;
        this.swingLikelihood = new SwingLikelihood(system, evidence);
        DesignCheck design = new DesignCheck(system);
        for (Hypothesis hypothesis : Hypothesis.values()) {
            priors.put(hypothesis, design.prior(hypothesis));
        }
        addSwing();
        addColdPressure();
        addCharge();
        addTemperatures();
        for (Sign sign : evidence.signs()) {
            clues.add(clue(sign.words(), hypothesis -> LikelihoodTable.of(sign, hypothesis)));
        }
    }

    List<Clue> clues() {
        return List.copyOf(clues);
    }

    Map<Hypothesis, Double> priors() {
        return priors;
    }

    /** What the swing leaves of the gas that a hypothesis expects: weights over the grid of {@link GasPrior}, adding up to one. */
    double[] gasAfterSwing(Hypothesis hypothesis) {
        return gas.getOrDefault(hypothesis, new double[GasPrior.points()]);
    }

    /** Whether the evidence could have shown a loss of gas; otherwise the ranking is little more than what was thought before. */
    boolean tells() {
        return evidence.charge() != null || swingLikelihood.tells();
    }

    Map<Hypothesis, Double> probabilities() {
        Map<Hypothesis, Double> weights = new EnumMap<>(Hypothesis.class);
        double sum = 0;
        for (Map.Entry<Hypothesis, Double> prior : priors.entrySet()) {
            double weight = prior.getValue();
            for (Clue clue : clues) {
                weight *= clue.of(prior.getKey());
            }
            weights.put(prior.getKey(), weight);
            sum += weight;
        }
        double all = sum;
        if (!(all > 0 && all <= Double.MAX_VALUE)) {
            throw new OutOfRangeException(
                    "weight of the evidence",
                    String.valueOf(all),
                    "above zero and finite",
                    "check the readings, their errors and the air pressure, and their units");
        }
        weights.replaceAll((hypothesis, weight) -> weight / all);
        return weights;
    }

    private void addSwing() {
        double[] inside = swingLikelihood.of(false);
        double[] outside = swingLikelihood.of(true);
        Map<Hypothesis, Double> swing = new EnumMap<>(Hypothesis.class);
        for (Hypothesis hypothesis : Hypothesis.values()) {
            double[] densities = hypothesis == Hypothesis.AIR_IN_LOOP ? outside : inside;
            double[] weights = GasPrior.weights(hypothesis);
            double sum = 0;
            for (int i = 0; i < weights.length; i++) {
                weights[i] *= densities[i];
                sum += weights[i];
            }
            swing.put(hypothesis, withSurprise(sum));
            for (int i = 0; sum > 0 && i < weights.length; i++) {
                weights[i] /= sum;
            }
            gas.put(hypothesis, sum > 0 ? weights : GasPrior.weights(hypothesis));
        }
        clues.add(new Clue(swingWords(), swing));
    }

    private String swingWords() {
        Reading cold = evidence.cold().reading();
        Reading hot = evidence.hot().reading();
        return "a swing of " + hot.pressure().minus(cold.pressure()).textInBothSystems() + " from "
                + cold.temperature().text(UnitSystem.SI) + " to "
                + hot.temperature().text(UnitSystem.SI);
    }

    private void addColdPressure() {
        ColdPressureLikelihood likelihood = new ColdPressureLikelihood(system, evidence);
        clues.add(clue("a cold pressure " + likelihood.words(), hypothesis -> withSurprise(likelihood.of(hypothesis))));
    }

    /** Densities are per pascal; a surprise may be anywhere up to the relief setting. */
    private double withSurprise(double density) {
        return (1 - LikelihoodTable.SURPRISE.value()) * density
                + LikelihoodTable.SURPRISE.value() / system.relief().setting().si();
    }

    private void addCharge() {
        MeasuredCharge charge = evidence.charge();
        if (charge == null) {
            return;
        }
        ChargeLikelihood likelihood = new ChargeLikelihood(system, charge);
        clues.add(clue(likelihood.words(), hypothesis -> likelihood.of(hypothesis, gasAfterSwing(hypothesis))));
    }

    private void addTemperatures() {
        double hot = Densities.above(
                evidence.hot().reading().temperature().si(),
                system.designHot().si(),
                Densities.standard(evidence.hot().temperatureError().si()));
        double cold = 1
                - Densities.above(
                        evidence.cold().reading().temperature().si(),
                        system.designCold().si(),
                        Densities.standard(evidence.cold().temperatureError().si()));
        clues.add(clue(temperatureWords(), hypothesis -> switch (hypothesis) {
            case HOTTER_THAN_DESIGNED -> hot;
            case COLDER_THAN_DESIGNED -> cold;
            default -> (1 - (1 - STRAY.value()) * hot) * (1 - (1 - STRAY.value()) * cold);
        }));
    }

    private String temperatureWords() {
        boolean hotter = evidence.hot().reading().temperature().compareTo(system.designHot()) > 0;
        boolean colder = evidence.cold().reading().temperature().compareTo(system.designCold()) < 0;
        if (hotter) {
            return colder ? "temperatures outside the design range" : "a loop hotter than its design";
        }
        return colder ? "a loop colder than its design" : "temperatures within the design range";
    }

    private static Clue clue(String words, ToDoubleFunction<Hypothesis> likelihood) {
        Map<Hypothesis, Double> likelihoods = new EnumMap<>(Hypothesis.class);
        for (Hypothesis hypothesis : Hypothesis.values()) {
            likelihoods.put(hypothesis, likelihood.applyAsDouble(hypothesis));
        }
        return new Clue(words, likelihoods);
    }
}
