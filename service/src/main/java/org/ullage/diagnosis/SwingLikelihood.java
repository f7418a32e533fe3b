package org.ullage.diagnosis;

import java.util.EnumMap;
import java.util.Map;
import org.ullage.operation.Reading;
import org.ullage.pressure.ReliefValve;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * How well each amount of gas explains the hot reading, the cold one being what it is. Errors of both readings and of the contents and
 * a drift of the gas temperature are carried through by the slope at that amount (JCGM 100:2008, clause 5.1.2).
 */
final class SwingLikelihood {

    /** The gas of a vessel in a boiler room need not stay as warm as it was: a standard uncertainty. */
    private static final Constant GAS_DRIFT = new Constant(
            "u_gas",
            2,
            "K",
            Source.commonPractice("judgement: gas of an unlagged vessel follows the room, not the loop"));

    private static final Constant CLEARLY = new Constant("k", 3, "1", LikelihoodTable.SOURCE);

    private final SwingModel model;
    private final Swing swing;
    private final double gas;
    private final double observed;
    private final double gaugeDeviation;
    private final Map<SwingInput, Double> shifts = new EnumMap<>(SwingInput.class);
    private final double valve;
    private final double valveDeviation;

    SwingLikelihood(InstalledSystem system, Evidence evidence) {
        double air = system.atmosphere().si();
        Reading cold = evidence.cold().reading();
        Reading hot = evidence.hot().reading();
        ReliefValve relief = system.relief();
        this.valve = relief.setting().si() + air;
        this.valveDeviation = Densities.standard(
                (relief.fullyOpenAt().si() - relief.closesAtLeast().si()) / 2);
        this.model = new SwingModel(system, valve);
        this.gas = system.gasSi();
        this.observed = hot.pressure().si() + air;
        this.gaugeDeviation = Densities.standard(evidence.hot().pressureError().si());
        this.swing = new Swing(
                cold.pressure().si() + air,
                cold.temperature().si(),
                hot.temperature().si(),
                1,
                1,
                1);
        shifts.put(
                SwingInput.COLD_PRESSURE,
                Densities.standard(evidence.cold().pressureError().si()));
        shifts.put(
                SwingInput.COLD_TEMPERATURE,
                Densities.standard(evidence.cold().temperatureError().si()));
        shifts.put(
                SwingInput.HOT_TEMPERATURE,
                Densities.standard(evidence.hot().temperatureError().si()));
        shifts.put(SwingInput.HOT_GAS_RATIO, gasDrift());
        shifts.put(
                SwingInput.CONTENTS,
                Densities.standard(
                        system.contentsError().si() / system.loop().contents().si()));
    }

    /** Standard uncertainty of the gas temperature between the readings, as a share. */
    static double gasDrift() {
        return GAS_DRIFT.value() / InstalledSystem.CHARGED_AT.si();
    }

    /** The density of the hot reading for each share of the gas, in 1/Pa. */
    double[] of(boolean outside) {
        double[] densities = new double[GasPrior.points()];
        for (int i = 0; i < densities.length; i++) {
            densities[i] = density(gas * GasPrior.share(i), outside);
        }
        return densities;
    }

    /** Whether the swing would show it if half of the gas were gone: by more than three standard uncertainties. */
    boolean tells() {
        double sound = Math.min(valve, model.after(swing, gas, false));
        double half = Math.min(valve, model.after(swing, gas / 2, false));
        return half - sound > CLEARLY.value() * Math.sqrt(variance(gas, false, sound));
    }

    private double density(double amount, boolean outside) {
        double expected = model.after(swing, amount, outside);
        if (expected >= valve) {
            // The valve has lifted: what is read then hangs on the valve.
            return Densities.normal(observed, valve, Math.hypot(gaugeDeviation, valveDeviation));
        }
        return Densities.normal(observed, expected, Math.sqrt(variance(amount, outside, expected)));
    }

    private double variance(double amount, boolean outside, double expected) {
        double variance = gaugeDeviation * gaugeDeviation;
        for (Map.Entry<SwingInput, Double> shift : shifts.entrySet()) {
            double moved = model.after(swing.shifted(shift.getKey(), shift.getValue()), amount, outside) - expected;
            variance += moved * moved;
        }
        return variance;
    }
}
