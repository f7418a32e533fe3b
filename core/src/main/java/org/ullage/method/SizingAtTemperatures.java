package org.ullage.method;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;

/**
 * One sizing of a closed vessel again and again with other contents and pressures but the same temperatures, on bare SI numbers and
 * without allocation: what hangs on the temperatures alone is worked out once. The expansion, which hangs on the pressures by the little
 * that a liquid gives way, follows them along its tangent. At the pressures of the sizing it started from the answer is the same to the
 * last bit. Immutable and safe for many threads.
 */
public final class SizingAtTemperatures implements Serializable {

    private static final long serialVersionUID = 1L;

    /** Relative step for the slope of the expansion; upwards, where the fluid stays liquid. */
    private static final double STEP = 1e-2;

    private final PressuresAtTemperatures pressures;
    private final WaterReserve reserve;
    private final GasTemperatures gas;
    private final double coldRatio;
    private final double leastPerWater;
    private final double limit;
    private final double cold;
    private final double last;
    private final double fraction;
    private final double slopeOfCold;
    private final double slopeOfLast;
    private final double credit;
    private final double vapour;
    private final double leastLast;

    private SizingAtTemperatures(SizingNumbers numbers) {
        Method method = numbers.method;
        Constant least = method.leastVolumePerWater();
        VolumeFraction acceptance = numbers.job.vessel().acceptanceLimit();
        LoopFluid fluid = numbers.job.loop().fluid();
        ThermalStates states = numbers.states;
        this.reserve = method.reserve();
        this.gas = method.gasTemperatures();
        this.coldRatio = gas.coldRatio();
        this.leastPerWater = least == null ? 0 : least.value();
        this.limit = acceptance == null ? Double.POSITIVE_INFINITY : acceptance.si();
        this.cold = states.coldPascals();
        this.last = states.hotPascals();
        this.fraction = numbers.expansionFraction;
        double higherCold = method.expansion().fraction(fluid, at(states, cold * (1 + STEP), last));
        double higherLast = method.expansion().fraction(fluid, at(states, cold, last * (1 + STEP)));
        this.slopeOfCold = (higherCold - fraction) / (cold * STEP);
        this.slopeOfLast = (higherLast - fraction) / (last * STEP);
        this.credit = numbers.creditFraction;
        this.vapour = numbers.vapour;
        double boiling = fluid.vapourPressureSi(states.hotKelvins());
        this.leastLast = method.vapour().isForBoilingLoops() ? 0 : boiling;
        this.pressures = new PressuresAtTemperatures(numbers, boiling);
    }

    private static ThermalStates at(ThermalStates states, double coldPascals, double lastPascals) {
        return new ThermalStates(
                states.coldKelvins(),
                states.hotKelvins(),
                coldPascals,
                lastPascals,
                states.coldGiven(),
                states.hotGiven(),
                states.pipeAlpha());
    }

    /**
     * Prepares for many.
     *
     * @param method the method
     * @param job the job to start from, which it must be able to size; inputs given there must be given again each time
     * @return the method as a function of contents and pressures
     * @throws OutOfRangeException if the method refuses the job, or the vessel is an open tank, which has no pressures
     */
    public static SizingAtTemperatures of(Method method, SizingJob job) {
        VesselKind kind = job.vessel().kind();
        if (kind == VesselKind.OPEN) {
            throw new OutOfRangeException("vessel kind", kind.word(), "a closed vessel", "size an open tank by itself");
        }
        return new SizingAtTemperatures(new SizingNumbers(method, job));
    }

    /**
     * Smallest nominal volume that does the job. Pressures are gauge, as {@link org.ullage.pressure.PressureInputs} has them; one that is
     * not given there is NaN here.
     *
     * @param contents of the loop, m3
     * @param headMetres static head
     * @param coldGauge stated cold pressure at the vessel, Pa
     * @param chargeGauge stated gas charge, Pa
     * @param finalGauge stated final pressure at the vessel, Pa
     * @param setting setting of the relief valve, Pa
     * @return m3; NaN where {@link Method#size} must be asked, because it refuses or the rule is a table with pressures of its own
     */
    public double cubicMetres(
            double contents,
            double headMetres,
            double coldGauge,
            double chargeGauge,
            double finalGauge,
            double setting) {
        double coldPascals = pressures.cold(headMetres, coldGauge);
        double lastPascals = pressures.last(finalGauge, setting);
        double charge = pressures.charge(chargeGauge, coldPascals);
        double chargeCold = charge * coldRatio;
        if (!(contents > 0 && charge > 0 && coldPascals < lastPascals && lastPascals >= leastLast)
                || GasLaw.isAbove(chargeCold, coldPascals)) {
            return Double.NaN;
        }
        double byGas = GasLaw.volumePerWater(charge, coldPascals, lastPascals, gas);
        // a vessel that can fill its whole shell is never limited by it: the gas law asks for more
        double free = limit < 1 ? limit - GasLaw.waterShare(chargeCold, coldPascals) : Double.POSITIVE_INFINITY;
        double perWater = Math.max(Math.max(byGas, leastPerWater), 1 / free);
        double share = fraction + slopeOfCold * (coldPascals - cold) + slopeOfLast * (lastPascals - last);
        double expansion = contents * (share - credit);
        double taken = expansion + reserve.cubicMetres(contents, expansion, perWater) + vapour;
        boolean isAnswer = byGas > 0 && free > 0 && expansion + vapour > 0;
        return isAnswer ? taken * perWater : Double.NaN;
    }
}
