package org.ullage.diagnosis;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/** Whether a sound vessel of this system is large enough at all: arithmetic on the record, with the error of its contents. */
final class DesignCheck {

    private static final Constant KEPT_BELOW = new Constant(
            "margin", 0.1, "1", Source.fromMemory("trade practice", "final pressure 90 % of the relief setting"));

    /** The chance that a sound vessel would let the valve open. */
    private final double tooSmall;

    /** The chance that it would not, but come closer than it should. */
    private final double marginSmall;

    DesignCheck(InstalledSystem system) {
        double air = system.atmosphere().si();
        double opens = system.relief().mayOpenFrom().si() + air;
        double kept = system.relief().setting().si() * (1 - KEPT_BELOW.value()) + air;
        SwingModel model = new SwingModel(system, system.relief().fullyOpenAt().si() + air);
        Swing rise = new Swing(
                system.lowestFill().si() + air,
                system.fill().si(),
                Math.max(system.fill().si(), system.designHot().si()),
                1,
                1,
                1);
        double hot = model.after(rise, system.gasSi(), false);
        double share = Densities.standard(
                system.contentsError().si() / system.loop().contents().si());
        double tolerance = Densities.standard(system.relief().tolerance().si());
        double deviation = Math.hypot(
                tolerance, model.after(rise.shifted(SwingInput.CONTENTS, share), system.gasSi(), false) - hot);
        this.tooSmall = Densities.above(hot, opens, deviation);
        this.marginSmall = Math.max(0, Densities.above(hot, Math.min(kept, opens), deviation) - tooSmall);
    }

    /** The prior of a hypothesis: whether a sound vessel is large enough is worked out and not guessed. */
    double prior(Hypothesis hypothesis) {
        double sound = LikelihoodTable.prior(Hypothesis.HEALTHY)
                + LikelihoodTable.prior(Hypothesis.UNDERSIZED)
                + LikelihoodTable.prior(Hypothesis.VALVE_MARGIN_SMALL);
        return switch (hypothesis) {
            case HEALTHY -> sound * (1 - tooSmall - marginSmall);
            case UNDERSIZED -> sound * tooSmall;
            case VALVE_MARGIN_SMALL -> sound * marginSmall;
            default -> LikelihoodTable.prior(hypothesis);
        };
    }
}
