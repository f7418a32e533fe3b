package org.ullage.diagnosis;

import java.util.Arrays;
import java.util.Optional;
import org.ullage.provenance.Constant;

/** What to measure next, so that the two likeliest hypotheses come apart. */
final class NextStep {

    private static final String CHARGE =
            "isolate the vessel, drain its water side to zero pressure and measure the charge";

    private static final String SWING = "read again at a hotter loop: a wider swing tells more";

    /** A step that tells less than this is not worth the walk. */
    private static final Constant WORTH = new Constant("separation", 0.15, "1", LikelihoodTable.SOURCE);

    private static final int BINS = 10;

    private final InstalledSystem system;
    private final Evidence evidence;
    private final Weighing weighing;

    NextStep(InstalledSystem system, Evidence evidence, Weighing weighing) {
        this.system = system;
        this.evidence = evidence;
        this.weighing = weighing;
    }

    String between(Hypothesis one, Hypothesis other) {
        Optional<Inspection> best = Arrays.stream(Inspection.values())
                .filter(this::isOpen)
                .max((a, b) -> Double.compare(
                        LikelihoodTable.separation(a, one, other), LikelihoodTable.separation(b, one, other)));
        double bySign = best.map(inspection -> LikelihoodTable.separation(inspection, one, other))
                .orElse(0.0);
        double byCharge = evidence.charge() == null ? separationByCharge(one, other) : 0;
        if (Math.max(bySign, byCharge) < WORTH.value()) {
            boolean canBeHotter = evidence.hot().reading().temperature().compareTo(system.designHot()) < 0;
            return canBeHotter ? SWING : "size the vessel again with the contents and temperatures as they are";
        }
        return byCharge >= bySign ? CHARGE : best.map(Inspection::words).orElse(CHARGE);
    }

    private boolean isOpen(Inspection inspection) {
        return evidence.signs().stream().noneMatch(sign -> sign.inspection() == inspection);
    }

    /** How far apart the charges are that the two would let one measure, in steps of a tenth of the charge. */
    private double separationByCharge(Hypothesis one, Hypothesis other) {
        double[] first = charges(one);
        double[] second = charges(other);
        double sum = 0;
        for (int bin = 0; bin < first.length; bin++) {
            sum += Math.abs(first[bin] - second[bin]);
        }
        return sum / 2;
    }

    private double[] charges(Hypothesis hypothesis) {
        double[] weights = hypothesis == Hypothesis.AIR_IN_LOOP
                ? GasPrior.weights(Hypothesis.HEALTHY)
                : weighing.gasAfterSwing(hypothesis);
        // A drained vessel with less gas shows no less than the air.
        int least = (int) Math.round(ChargeLikelihood.least(system) * BINS);
        double[] bins = new double[Math.max(GasPrior.points() / BINS, least) + 1];
        for (int i = 0; i < weights.length; i++) {
            bins[Math.max(least, (i + BINS / 2) / BINS)] += weights[i];
        }
        return bins;
    }
}
