package org.ullage.fluids;

import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.VolumeFraction;

/**
 * Ethylene glycol in water by its default model: the short way to {@link Glycol#ETHYLENE}, which has the rest.
 *
 * <pre>{@code
 * LoopFluid fluid = EthyleneGlycol.volumePercent(30);
 * LoopFluid asAshraeHasIt = Glycol.ETHYLENE.by(GlycolModel.ASHRAE, VolumeFraction.percent(30));
 * }</pre>
 *
 * <p>Which model is the default, and why, stands at {@link Glycol#defaultModel(VolumeFraction)}.
 */
public final class EthyleneGlycol {

    private EthyleneGlycol() {}

    /**
     * The mixture by volume.
     *
     * @param percent glycol by volume in percent
     * @return the fluid
     * @throws OutOfRangeException if the percentage is not one, or the default model does not reach it
     */
    public static GlycolSolution volumePercent(double percent) {
        return Glycol.ETHYLENE.of(VolumeFraction.percent(percent));
    }

    /**
     * The mixture by mass.
     *
     * @param percent glycol by mass in percent
     * @return the fluid
     * @throws OutOfRangeException if the percentage is not one, or the default model does not reach it
     */
    public static GlycolSolution massPercent(double percent) {
        return Glycol.ETHYLENE.of(MassFraction.percent(percent));
    }
}
