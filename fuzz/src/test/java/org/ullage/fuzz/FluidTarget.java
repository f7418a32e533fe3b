package org.ullage.fuzz;

import java.util.List;
import org.ullage.fluids.ConcentrationDefinition;
import org.ullage.fluids.Expansion;
import org.ullage.fluids.FluidComparison;
import org.ullage.fluids.FluidSeries;
import org.ullage.fluids.FreezingModel;
import org.ullage.fluids.Glycol;
import org.ullage.fluids.GlycolSolution;
import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.VolumeFraction;

/** Every fluid model over temperature, pressure and concentration, within its limits and beyond. */
final class FluidTarget implements Target {

    @Override
    public String name() {
        return "fluids";
    }

    @Override
    public double share() {
        return 0.42;
    }

    @Override
    public Object ask(Draw draw) {
        double kind = draw.between(0, 1);
        if (kind < 0.9) {
            state(Pool.fluid(draw), draw);
            return null;
        }
        if (kind < 0.95) {
            return concentration(draw);
        }
        if (kind < 0.98) {
            return Expansion.between(Pool.fluid(draw), Values.celsius(draw, 5, 40), Values.celsius(draw, 40, 95));
        }
        return kind < 0.9995 ? glycol(Pool.glycol(draw)) : table(draw);
    }

    /** Only IAPWS-IF97 depends on pressure; the other models ignore it, as {@link LoopFluid} says. */
    private static void state(LoopFluid fluid, Draw draw) {
        double kelvins = draw.number(fluid.lowest().si(), fluid.highest().si());
        double vapour = Finite.check("vapour pressure", fluid.vapourPressureSi(kelvins));
        double pascals = draw.number(1.0001 * vapour, 2e6);
        double volume = Finite.check("specific volume", fluid.specificVolumeSi(kelvins, pascals));
        boolean liquid = fluid.isLiquidSi(kelvins, pascals);
        if (volume <= 0 || vapour < 0) {
            throw new Fault(fluid.name() + "/" + fluid.model() + " at " + kelvins + " K, " + pascals + " Pa: volume "
                    + volume + ", vapour pressure " + vapour);
        }
        if (!liquid && fluid == Water.IAPWS_IF97) {
            throw new Fault(fluid.model() + " gives a volume at " + kelvins + " K, " + pascals + " Pa, where it boils");
        }
    }

    private static Object concentration(Draw draw) {
        Glycol glycol = draw.of(Glycol.values());
        ConcentrationDefinition definition = draw.of(ConcentrationDefinition.values());
        double fraction = draw.number(0, 1);
        if (draw.chance(0.3)) {
            return glycol.protectingTo(Temperature.celsius(draw.number(-45, -1)));
        }
        if (draw.chance(0.3)) {
            return glycol.freezing(draw.of(FreezingModel.values()));
        }
        return draw.chance(0.5)
                ? glycol.massFraction(VolumeFraction.ofSi(fraction), definition)
                : glycol.volumeFraction(MassFraction.ofSi(fraction), definition);
    }

    /** A fluid is no answer by itself, so what it tells is gathered here. */
    private static Object glycol(GlycolSolution solution) {
        return List.of(
                solution.name(),
                solution.volumeFraction(),
                solution.massFraction(),
                solution.freezingPoint(),
                solution.lowest(),
                solution.highest(),
                solution.raoult());
    }

    private static Object table(Draw draw) {
        Temperature from = Values.celsius(draw, 5, 40);
        Temperature to = Values.celsius(draw, 40, 95);
        return draw.chance(0.5)
                ? FluidSeries.of(Pool.fluid(draw), from, to, (int) draw.number(1, 100))
                : FluidComparison.of(Pool.glycol(draw), from, to);
    }
}
