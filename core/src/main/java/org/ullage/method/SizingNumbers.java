package org.ullage.method;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.provenance.Constant;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * The calculation of one sizing on bare SI numbers, done once in the constructor. {@link Sizing} shows its numbers in types and
 * {@link SizingWorkings} in steps; neither computes anything again.
 */
final class SizingNumbers implements Serializable {

    private static final long serialVersionUID = 1L;

    final Method method;
    final SizingJob job;

    final SizingPressures pressures;
    final ThermalStates states;
    final double expansionFraction;
    final double creditFraction;
    final double expansion;
    final double gasVolumePerWater;
    final double limitVolumePerWater;
    final double reserve;
    final double vapour;

    SizingNumbers(Method method, SizingJob job) {
        this.method = method;
        this.job = job;
        this.pressures = new SizingPressures(method, job);
        if (job.vessel().kind() == VesselKind.OPEN) {
            Constant allowance = method.openAllowance();
            this.gasVolumePerWater = allowance == null ? 1 : allowance.value();
            this.limitVolumePerWater = 1;
        } else {
            VesselArithmetic vessel = new VesselArithmetic(method, job);
            this.gasVolumePerWater = gasVolumePerWater(vessel);
            this.limitVolumePerWater = limitVolumePerWater(vessel);
        }
        this.states = states();
        LoopFluid fluid = job.loop().fluid();
        requireLiquid(fluid);
        this.expansionFraction = method.expansion().fraction(fluid, states);
        this.creditFraction = method.pipeCredit().fraction(states.pipeAlpha(), states.rise());
        double contents = job.loop().contents().si();
        this.expansion = contents * (expansionFraction - creditFraction);
        this.vapour = method.vapour().cubicMetres(job.loop().stagnation(), method.title());
        requireExpansion();
        this.reserve = method.reserve().cubicMetres(contents, expansion, volumePerWater());
    }

    private double gasVolumePerWater(VesselArithmetic vessel) {
        double byGas = vessel.byGasLaw(pressures.charge, pressures.cold, pressures.last);
        if (!(byGas > 0) || byGas == Double.POSITIVE_INFINITY) {
            throw new OutOfRangeException(
                    "gas temperature with the loop hot",
                    method.gasTemperatures().hot().textInBothSystems(),
                    "low enough to leave room for water at the final pressure",
                    "keep the vessel on the cold side of the loop");
        }
        return Math.max(byGas, vessel.least());
    }

    /** Nominal volume for each unit of water taken in, by the acceptance limit: what is in already when cold counts too. */
    private double limitVolumePerWater(VesselArithmetic vessel) {
        double free = vessel.freeShare(pressures.charge, pressures.cold);
        VolumeFraction limit = job.vessel().acceptanceLimit();
        if (limit != null && free <= 0) {
            throw new OutOfRangeException(
                    "acceptance limit",
                    limit.text(UnitSystem.SI),
                    "above the share of the vessel that is water when cold, "
                            + VolumeFraction.ofSi(limit.si() - free).text(UnitSystem.SI),
                    "raise the gas charge towards the cold pressure or take a vessel with a higher limit");
        }
        return 1 / free;
    }

    private ThermalStates states() {
        LoopFluid fluid = job.loop().fluid();
        boolean hotGiven = method.hotBasis().of(job.temperatures()) != null;
        boolean coldGiven = job.temperatures().cold() != null;
        // a rule that needs no temperature gets one at which every model answers
        double hot = hotGiven || method.needsHot()
                ? job.requireHot(method.hotBasis(), method.title()).si()
                : fluid.lowest().si();
        double cold = coldGiven || method.needsCold(fluid)
                ? job.requireCold(method.title()).si()
                : hot;
        PipeMaterial pipe = job.loop().pipe();
        double alpha = pipe == null ? 0 : pipe.linearExpansion().si();
        return new ThermalStates(cold, hot, pressures.cold, pressures.last, coldGiven, hotGiven, alpha);
    }

    /** A model without pressure dependence, and a rule without densities, would not notice that the loop boils. */
    private void requireLiquid(LoopFluid fluid) {
        if (method.vapour().isForBoilingLoops()
                || (job.vessel().kind() == VesselKind.OPEN && method.expansion().coversBoilingAtTheTank())) {
            return;
        }
        if (!fluid.isLiquidSi(states.hotKelvins(), pressures.last)) {
            throw new OutOfRangeException(
                    "highest temperature",
                    states.hot().textInBothSystems(),
                    "below boiling at the final pressure " + finalAbsolute().textInBothSystems() + "; there "
                            + fluid.name()
                            + " has a vapour pressure of "
                            + fluid.vapourPressure(states.hot()).text(UnitSystem.SI),
                    "raise the pressures or lower the temperature, and check the unit of the temperature");
        }
    }

    private void requireExpansion() {
        if (!(expansion + vapour > 0)) {
            throw new OutOfRangeException(
                    "net expansion",
                    Volume.ofSi(expansion).text(UnitSystem.SI),
                    "above zero",
                    "between these temperatures the pipes grow as much as the fluid, or water is near its densest (4 degC):"
                            + " check the temperatures and the pipe material");
        }
    }

    /** All water the vessel must take. */
    double water() {
        return expansion + reserve + vapour;
    }

    /** Nominal volume for each unit of water taken in: the larger of what gas law and acceptance limit ask for. */
    double volumePerWater() {
        return Math.max(gasVolumePerWater, limitVolumePerWater);
    }

    AbsolutePressure ambientPressure() {
        return AbsolutePressure.ofSi(pressures.ambient);
    }

    AbsolutePressure chargeAbsolute() {
        return AbsolutePressure.ofSi(pressures.charge);
    }

    AbsolutePressure coldAbsolute() {
        return AbsolutePressure.ofSi(pressures.cold);
    }

    AbsolutePressure finalAbsolute() {
        return AbsolutePressure.ofSi(pressures.last);
    }
}
