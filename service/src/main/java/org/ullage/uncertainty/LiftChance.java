package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.List;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.VariedJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/**
 * The chance that the relief valve lifts with a given vessel. For every draw the method says how much water the vessel takes in from
 * which pressure; by the isothermal gas law it then reaches p_f = 1 / (1/p_i - V_x / (V_n p_0)), and the valve lifts if that is at or
 * above the drawn opening pressure, or if the water fits at no pressure. Immutable.
 *
 * @param question job, method and spreads
 * @param centre the sizing at the means of the inputs
 * @param nominal nominal volume of the vessel
 * @param headroom the distribution of p_open / p_f, absolute: at or below 1 the valve lifts, at or below 0 the water does not fit
 */
public record LiftChance(SizingUncertainty question, Sizing centre, Volume nominal, MonteCarloResult headroom)
        implements Serializable {

    static LiftChance of(SizingUncertainty question, Sizing centre, Volume nominal, int draws, long seed) {
        GasLaw.requireNominal(nominal);
        VesselKind kind = centre.job().vessel().kind();
        if (kind == VesselKind.OPEN) {
            throw new OutOfRangeException("vessel kind", kind.word(), "a closed vessel", "an open tank has no valve");
        }
        Method method = question.method();
        VariedJob jobs = question.jobs();
        ModelFunction model = row -> headroom(method.size(jobs.at(row)), nominal.si());
        return new LiftChance(question, centre, nominal, MonteCarlo.of(model, question.inputs(), draws, seed));
    }

    /** The gas law solved for 1 / p_f, so that water that does not fit is a negative number and not an infinite pressure. */
    private static double headroom(Sizing sizing, double nominal) {
        double air = sizing.atmosphere().si();
        double cold = sizing.coldPressure().si() + air;
        double charge = sizing.preCharge().si() + air;
        double perFinal = 1 / cold - sizing.acceptanceVolume().si() / (nominal * charge);
        return (opening(sizing) + air) * perFinal;
    }

    private static double opening(Sizing sizing) {
        PressureInputs pressures = sizing.job().pressures();
        GaugePressure setting = pressures.reliefSetting();
        return setting == null
                ? sizing.finalPressure().si()
                : setting.si() + pressures.place().valveToVesselPascals();
    }

    /**
     * The chance that the valve lifts, draws that the method refuses counted as none.
     *
     * @return share of all draws in which it lifts, from 0 to 1
     */
    public double chance() {
        return lifted() / headroom.draws();
    }

    /**
     * The chance if every draw that the method refuses is counted as a lift: the safe side.
     *
     * @return from {@link #chance()} to 1
     */
    public double chanceAtMost() {
        return (lifted() + headroom.draws() - headroom.answered()) / headroom.draws();
    }

    private double lifted() {
        return headroom.shareUpTo(1) * headroom.answered();
    }

    /**
     * How far the number of draws may have moved the chance.
     *
     * @return standard error, sqrt(p (1 - p) / n)
     */
    public double standardError() {
        return Math.sqrt(chance() * (1 - chance()) / headroom.draws());
    }

    /**
     * The dangers of the work, and how far a statement of chance goes.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return UncertaintyText.cautions(centre, headroom.source());
    }

    /**
     * The answer for people.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        String atMost = chanceAtMost() == chance()
                ? ""
                : " (at most " + UncertaintyText.percent(chanceAtMost()) + " with the draws that have no answer)";
        return "With a vessel of " + nominal.text(system) + " the relief valve lifts with a chance of "
                + UncertaintyText.percent(chance()) + atMost + ", from " + UncertaintyText.origin(headroom) + "\n"
                + UncertaintyText.refusals(headroom);
    }
}
