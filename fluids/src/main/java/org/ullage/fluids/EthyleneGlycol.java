package org.ullage.fluids;

import java.util.List;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;

/**
 * Ethylene glycol in water as a loop fluid: the short way to {@link Glycol#ETHYLENE}.
 *
 * <pre>{@code
 * LoopFluid fluid = EthyleneGlycol.volumePercent(30);
 * LoopFluid asAshraeHasIt = EthyleneGlycol.ashrae(VolumeFraction.percent(30));
 * }</pre>
 *
 * <p>Percent by volume and percent by mass are different types. A model that works with the other one gets it converted by
 * ASHRAE's pairing as far as that reaches (60 mass%) and by ideal volumes at 20 degC beyond, and says so in its
 * {@link GlycolSolution#model()}. Which model is the default, and why, stands at {@link Glycol#defaultModel(VolumeFraction)}.
 */
public final class EthyleneGlycol {

    private static final Glycol GLYCOL = Glycol.ETHYLENE;

    private EthyleneGlycol() {}

    /**
     * The mixture by the default model.
     *
     * @param percent glycol by volume in percent, as {@link #of(VolumeFraction)}
     * @return the fluid
     * @throws OutOfRangeException if the percentage is not one, or the default model does not reach it
     */
    public static GlycolSolution volumePercent(double percent) {
        return of(VolumeFraction.percent(percent));
    }

    /**
     * The mixture by the default model.
     *
     * @param percent glycol by mass in percent, as {@link #of(MassFraction)}
     * @return the fluid
     * @throws OutOfRangeException if the percentage is not one, or the default model does not reach it
     */
    public static GlycolSolution massPercent(double percent) {
        return of(MassFraction.percent(percent));
    }

    /**
     * The mixture by the default model.
     *
     * @param volume glycol by volume, 0 to 57.8 %
     * @return the fluid
     * @throws OutOfRangeException if the default model does not reach that concentration
     */
    public static GlycolSolution of(VolumeFraction volume) {
        return GLYCOL.of(volume);
    }

    /**
     * The mixture by the default model.
     *
     * @param mass glycol by mass, 0 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the default model does not reach that concentration
     */
    public static GlycolSolution of(MassFraction mass) {
        return GLYCOL.of(mass);
    }

    /**
     * The mixture by the ASHRAE Handbook table, corrected where it is misprinted, to 125 degC.
     *
     * @param volume glycol by volume, 10 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution ashrae(VolumeFraction volume) {
        return GLYCOL.by(GlycolModel.ASHRAE, volume);
    }

    /**
     * The mixture by the ASHRAE Handbook table, corrected where it is misprinted, to 125 degC.
     *
     * @param mass glycol by mass; converted to volume
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution ashrae(MassFraction mass) {
        return GLYCOL.by(GlycolModel.ASHRAE, mass);
    }

    /**
     * The mixture by the ASHRAE Handbook table with its misprints, to see what they are worth.
     *
     * @param volume glycol by volume, 10 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution ashraeAsPrinted(VolumeFraction volume) {
        return GLYCOL.by(GlycolModel.ASHRAE_AS_PRINTED, volume);
    }

    /**
     * The mixture by Melinder's polynomials of 2010, from the freezing point to 100 degC.
     *
     * @param volume glycol by volume; converted to mass
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution melinder(VolumeFraction volume) {
        return GLYCOL.by(GlycolModel.MELINDER, volume);
    }

    /**
     * The mixture by Melinder's polynomials of 2010, from the freezing point to 100 degC.
     *
     * @param mass glycol by mass, 0 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution melinder(MassFraction mass) {
        return GLYCOL.by(GlycolModel.MELINDER, mass);
    }

    /**
     * The mixture by M. Conde 2011, from the freezing point to 100 degC.
     *
     * @param volume glycol by volume; converted to mass
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution conde(VolumeFraction volume) {
        return GLYCOL.by(GlycolModel.CONDE, volume);
    }

    /**
     * The mixture by M. Conde 2011, from the freezing point to 100 degC.
     *
     * @param mass glycol by mass, 0 to 60 %
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution conde(MassFraction mass) {
        return GLYCOL.by(GlycolModel.CONDE, mass);
    }

    /**
     * The mixture by ideal mixing, 0 to 125 degC: a lower bound of the expansion.
     *
     * @param volume glycol by volume; converted to mass
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution idealMixing(VolumeFraction volume) {
        return GLYCOL.by(GlycolModel.IDEAL_MIXING, volume);
    }

    /**
     * The mixture by ideal mixing, 0 to 125 degC: a lower bound of the expansion.
     *
     * @param mass glycol by mass, 0 to 100 %
     * @return the fluid
     * @throws OutOfRangeException if the model does not reach that concentration
     */
    public static GlycolSolution idealMixing(MassFraction mass) {
        return GLYCOL.by(GlycolModel.IDEAL_MIXING, mass);
    }

    /**
     * The mixture by every model that reaches the concentration.
     *
     * @param volume glycol by volume
     * @return in the order of {@link GlycolModel}, never empty
     */
    public static List<GlycolSolution> models(VolumeFraction volume) {
        return GLYCOL.models(volume);
    }

    /**
     * The mixture by every model that reaches the concentration.
     *
     * @param mass glycol by mass
     * @return in the order of {@link GlycolModel}, never empty
     */
    public static List<GlycolSolution> models(MassFraction mass) {
        return GLYCOL.models(mass);
    }

    /**
     * The mixture, by the default model, that stays free of ice down to a temperature by both published sources.
     *
     * @param freezingPoint 0 degC down to -48.3 degC
     * @return the weakest such mixture
     * @throws OutOfRangeException if no mixture covered stays liquid there
     */
    public static GlycolSolution protectingTo(Temperature freezingPoint) {
        return of(GLYCOL.freezing().massFractionFor(freezingPoint));
    }

    /**
     * The freezing points on the safe side, and the concentration for a wanted one.
     *
     * @return the warmer of ASHRAE's and Melinder's at each concentration
     */
    public static FreezingCurve freezing() {
        return GLYCOL.freezing();
    }
}
