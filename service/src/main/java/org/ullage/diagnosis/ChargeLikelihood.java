package org.ullage.diagnosis;

import org.ullage.provenance.Constant;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.vessel.GasLaw;

/**
 * How well each hypothesis explains the charge that was measured with the water side at zero pressure. Drained, the membrane gives way
 * to the air until the gas is at the pressure of the air: a vessel that has lost more than its gauge pressure shows zero, whatever is
 * left.
 */
final class ChargeLikelihood {

    /** Temperature of the shell against that of the gas, as a share of the absolute pressure. */
    private static final Constant SHELL = new Constant("u_shell", 0.01, "1", LikelihoodTable.SOURCE);

    private final MeasuredCharge charge;
    private final double share;
    private final double deviation;
    private final double least;

    ChargeLikelihood(InstalledSystem system, MeasuredCharge charge) {
        double air = system.atmosphere().si();
        double wanted = system.charge().si() + air;
        AbsolutePressure measured = GasLaw.chargeAt(
                charge.pressure().absolute(system.atmosphere()), charge.gas(), InstalledSystem.CHARGED_AT);
        this.charge = charge;
        this.share = measured.si() / wanted;
        this.least = least(system);
        this.deviation = Math.hypot(Densities.standard(charge.error().si()) / wanted, SHELL.value() * share);
    }

    /** The share of the charge that a gauge shows at least: air over the wanted charge. */
    static double least(InstalledSystem system) {
        double air = system.atmosphere().si();
        return air / (system.charge().si() + air);
    }

    /**
     * @param gas what the swing leaves of the gas the hypothesis expects
     */
    double of(Hypothesis hypothesis, double[] gas) {
        double density = 0;
        if (hypothesis == Hypothesis.AIR_IN_LOOP) {
            // The gas that is too much is not in the vessel.
            density = Densities.normal(share, 1, Math.hypot(deviation, GasPrior.spreadOfASoundCharge()));
        } else {
            for (int i = 0; i < gas.length; i++) {
                density += gas[i] * Densities.normal(share, Math.max(least, GasPrior.share(i)), deviation);
            }
        }
        return (1 - LikelihoodTable.SURPRISE.value()) * density + LikelihoodTable.SURPRISE.value();
    }

    String words() {
        return "a measured charge of " + charge.pressure().textInBothSystems() + " at "
                + charge.gas().textInBothSystems();
    }
}
