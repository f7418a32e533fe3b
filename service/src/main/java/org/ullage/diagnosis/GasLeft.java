package org.ullage.diagnosis;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.ullage.operation.GasCushion;
import org.ullage.operation.Reading;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The gas that is left, straight from two readings and the contents, without isolating anything: what the loop gave off between them
 * was taken in by a gas that follows Boyle's law. Valid while the vessel holds water at both readings and all gas is in it. Immutable.
 *
 * <pre>G = V_e / (1/p_1 - 1/p_2),  p_0 = G / V_n</pre>
 *
 * @param charge p_0 as a gauge would show it at 20 degC with the water side empty
 * @param uncertainty standard uncertainty of p_0, from gauge, thermometer, contents and drift of the gas temperature
 * @param share what is left of the gas that was charged, 1 for all of it
 * @param waterWhenCold water in the vessel at the cold reading: V_n - G/p_1, zero if the vessel is empty then
 * @param expansion V_e, what the loop gave off
 * @param step how p_0 was reached
 */
public record GasLeft(
        GaugePressure charge,
        PressureDifference uncertainty,
        double share,
        Volume waterWhenCold,
        Volume expansion,
        Step step)
        implements Serializable {

    private static final Source BALANCE =
            Source.computed("conservation of mass and Boyle's law", "gas from two readings, re-arranged here");

    /**
     * The gas that is left.
     *
     * @param system what was installed
     * @param evidence the two readings
     * @return the gas, or nothing if the hot pressure is not the higher one or the loop gave off nothing
     */
    static Optional<GasLeft> of(InstalledSystem system, Evidence evidence) {
        double air = system.atmosphere().si();
        Reading cold = evidence.cold().reading();
        Reading hot = evidence.hot().reading();
        double first = cold.pressure().si() + air;
        double second = hot.pressure().si() + air;
        SwingModel model = new SwingModel(system, second);
        double expansion = model.expansion(
                cold.temperature().si(), first, hot.temperature().si(), second, 1);
        if (second <= first || expansion <= 0) {
            return Optional.empty();
        }
        double gas = first * GasCushion.gas(expansion, first, second);
        double charge = gas / system.nominal().si();
        double deviation = charge * relative(model, system, evidence, first, second, expansion);
        return Optional.of(new GasLeft(
                AbsolutePressure.ofSi(charge).gauge(system.atmosphere()),
                PressureDifference.ofSi(deviation),
                gas / system.gasSi(),
                Volume.ofSi(Math.max(0, system.nominal().si() - gas / first)),
                Volume.ofSi(expansion),
                step(system, first, second, expansion, charge)));
    }

    /** Relative standard uncertainty: the parts of the two pressures, the two temperatures, the contents and the gas temperature. */
    private static double relative(
            SwingModel model,
            InstalledSystem system,
            Evidence evidence,
            double first,
            double second,
            double expansion) {
        double gap = 1 / first - 1 / second;
        double ofCold = Densities.standard(evidence.cold().pressureError().si()) / (first * first * gap);
        double ofHot = Densities.standard(evidence.hot().pressureError().si()) / (second * second * gap);
        double cold = evidence.cold().reading().temperature().si();
        double hot = evidence.hot().reading().temperature().si();
        double coldShift = Densities.standard(evidence.cold().temperatureError().si());
        double hotShift = Densities.standard(evidence.hot().temperatureError().si());
        double ofColdTemperature = (model.expansion(cold - coldShift, first, hot, second, 1) - expansion) / expansion;
        double ofHotTemperature = (model.expansion(cold, first, hot - hotShift, second, 1) - expansion) / expansion;
        double ofContents = Densities.standard(
                system.contentsError().si() / system.loop().contents().si());
        double ofGas = SwingLikelihood.gasDrift() / (second * gap);
        return Math.sqrt(ofCold * ofCold
                + ofHot * ofHot
                + ofColdTemperature * ofColdTemperature
                + ofHotTemperature * ofHotTemperature
                + ofContents * ofContents
                + ofGas * ofGas);
    }

    private static Step step(InstalledSystem system, double first, double second, double expansion, double charge) {
        return new Step(
                "charge equivalent of the gas that is left, absolute",
                "V_e / (V_n * (1 / p_1 - 1 / p_2))",
                List.of(
                        Term.of("V_e", Volume.ofSi(expansion)),
                        Term.of("V_n", system.nominal()),
                        Term.of("p_1", AbsolutePressure.ofSi(first)),
                        Term.of("p_2", AbsolutePressure.ofSi(second))),
                Term.of("p_0", AbsolutePressure.ofSi(charge)),
                BALANCE);
    }

    /**
     * The gas for people.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "gas left: " + Math.round(100 * share) + " % of the charge, as if charged to " + charge.text(system, 3)
                + " at 20 degC (68 degF), standard uncertainty " + uncertainty.text(system, 2)
                + "; water in the vessel when cold "
                + waterWhenCold.text(system, 3);
    }
}
