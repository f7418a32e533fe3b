package org.ullage.diagnosis;

import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.PipeCredit;

/**
 * The pressure a loop comes to when it goes from one temperature to another with a known amount of gas, on bare SI numbers, pressures
 * absolute. With gas G = p V at the temperature of the charge and gas temperature ratios r:
 *
 * <pre>V_gas1 = G r_1 / p_1,  V_e = V_s (v_2/v_1 - 1 - 3 alpha (t_2 - t_1)),  p_2 = G r_2 / (V_gas1 - V_e)</pre>
 *
 * <p>Gas in the vessel cannot fill more than the vessel; gas elsewhere in the loop is not so bound.
 */
final class SwingModel {

    /** Rounds of the dependence of the fluid's volume on the pressure sought; each gains three digits. */
    private static final int ROUNDS = 3;

    private final LoopFluid fluid;
    private final double contents;
    private final double alpha;
    private final double nominal;
    private final double ceiling;

    /**
     * @param ceiling a pressure above which the fluid is no longer asked: the valve has lifted long before
     */
    SwingModel(InstalledSystem system, double ceiling) {
        PipeMaterial pipe = system.loop().pipe();
        this.fluid = system.loop().fluid();
        this.contents = system.loop().contents().si();
        this.alpha = pipe == null ? 0 : pipe.linearExpansion().si();
        this.nominal = system.nominal().si();
        this.ceiling = ceiling;
    }

    /** What the loop gives off between two states, times a factor on its contents. */
    double expansion(double fromKelvins, double fromPascals, double toKelvins, double toPascals, double factor) {
        double ratio = fluid.specificVolumeSi(toKelvins, toPascals) / fluid.specificVolumeSi(fromKelvins, fromPascals);
        return contents * factor * (ratio - 1 - PipeCredit.growth(alpha, toKelvins - fromKelvins));
    }

    /**
     * The second pressure.
     *
     * @param gas G, p V of the gas at the temperature of the charge
     * @param outside whether gas stands outside the vessel too, so that it may fill more than the nominal volume
     * @return p_2; the ceiling where the gas space closes before, or the pressure would be higher
     */
    double after(Swing swing, double gas, boolean outside) {
        double space = gas * swing.fromGasRatio() / swing.fromPascals();
        double gasVolume = outside ? space : Math.min(space, nominal);
        double pressure = swing.fromPascals();
        for (int i = 0; i < ROUNDS; i++) {
            double given = expansion(
                    swing.fromKelvins(), swing.fromPascals(), swing.toKelvins(), pressure, swing.contentsFactor());
            double left = gasVolume - given;
            pressure = left > 0 ? Math.min(ceiling, gas * swing.toGasRatio() / left) : ceiling;
        }
        return pressure;
    }
}
