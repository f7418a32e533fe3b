package org.ullage.method;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * The expansion by conservation of mass: what leaves the loop when it warms up, as the volume it takes in the vessel at the vessel's
 * own temperature, with the pipe's growth at its place in the balance. Immutable.
 *
 * <pre>e = [rho_1 - (1 + 3 alpha dt) rho_2] / rho_v = v_v [1/v_1 - (1 + 3 alpha dt)/v_2]</pre>
 *
 * <p>The rules in print count the expanded volume at the loop's temperature, although it cools down on its way to the vessel.
 *
 * @param vesselTemperature temperature of the water in the vessel
 * @param source where the model comes from
 */
public record MassBalanceExpansion(Temperature vesselTemperature, Source source) implements ExpansionRule {

    @Override
    public double fraction(LoopFluid fluid, ThermalStates states) {
        double v1 = fluid.specificVolumeSi(states.coldKelvins(), states.coldPascals());
        double v2 = fluid.specificVolumeSi(states.hotKelvins(), states.hotPascals());
        double vessel = fluid.specificVolumeSi(vesselTemperature.si(), states.hotPascals());
        return vessel * (1 / v1 - (1 + PipeCredit.growth(states.pipeAlpha(), states.rise())) / v2);
    }

    @Override
    public boolean needsCold(LoopFluid fluid) {
        return true;
    }

    @Override
    public List<Step> steps(LoopFluid fluid, ThermalStates states, double fraction) {
        Step cold = SpecificVolumeStep.of("cold", "v_1", fluid, states.cold(), states.coldPressure());
        Step hot = SpecificVolumeStep.of("hot", "v_2", fluid, states.hot(), states.hotPressure());
        Step vessel = SpecificVolumeStep.of("in the vessel", "v_v", fluid, vesselTemperature, states.hotPressure());
        Step balance = new Step(
                "what leaves the loop, at the vessel's temperature, as a share of the contents",
                "v_v * (1 / v_1 - (1 + 3 * alpha * dt) / v_2)",
                List.of(
                        vessel.result(),
                        cold.result(),
                        hot.result(),
                        Term.of("alpha", LinearExpansion.perKelvin(states.pipeAlpha())),
                        Term.of("dt", TemperatureDifference.ofSi(states.rise()))),
                Term.number("e", fraction),
                source);
        return List.of(cold, hot, vessel, balance);
    }

    @Override
    public List<Caution> warnings(LoopFluid fluid, ThermalStates states) {
        return List.of();
    }

    /**
     * The convention in words.
     *
     * @return the words
     */
    @Override
    public String toString() {
        return "mass that leaves the loop, at the vessel's temperature of " + vesselTemperature.text(UnitSystem.SI);
    }
}
