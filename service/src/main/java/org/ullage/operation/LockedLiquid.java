package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.workings.Workings;

/**
 * Liquid without gas, locked between shut valves or in a loop whose vessels take no more: how fast its pressure rises with temperature.
 * Immutable.
 *
 * <pre>dp/dT = (alpha_v - 3 alpha_l) / (chi + d / (2 E w) (2.5 - 2 nu))</pre>
 *
 * <p>alpha_v and chi are the fluid's own, from differences of its specific volume; without a wall the container is rigid, which is the
 * upper bound. The slope holds near the state it was asked for. Plastic grows more than water, so its slope may be negative.
 *
 * @param fluid a fluid whose model knows the effect of pressure
 * @param temperature of liquid and wall
 * @param pressure of the liquid
 * @param wall the pipe around it, or null for a rigid container
 */
public record LockedLiquid(
        LoopFluid fluid,
        Temperature temperature,
        AbsolutePressure pressure,
        @Nullable PipeWall wall) implements Serializable {

    private static final int DIGITS = 3;

    /**
     * Locked in a rigid container.
     *
     * @param fluid the fluid
     * @param temperature of the liquid
     * @param pressure of the liquid
     * @return the locked liquid
     */
    public static LockedLiquid rigid(LoopFluid fluid, Temperature temperature, AbsolutePressure pressure) {
        return new LockedLiquid(fluid, temperature, pressure, null);
    }

    /**
     * The same liquid in a pipe.
     *
     * @param pipe its wall
     * @return a copy
     */
    public LockedLiquid in(PipeWall pipe) {
        return new LockedLiquid(fluid, temperature, pressure, pipe);
    }

    /**
     * Volumetric expansion of the liquid, (1/v) dv/dT at constant pressure.
     *
     * @return alpha_v in 1/K
     * @throws OutOfRangeException if the model does not answer there
     */
    public double expansionSi() {
        return LiquidDerivatives.expansion(fluid, temperature.si(), pressure.si());
    }

    /**
     * Isothermal compressibility of the liquid, -(1/v) dv/dp.
     *
     * @return chi in 1/Pa, above zero
     * @throws OutOfRangeException if the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public double compressibilitySi() {
        double chi = LiquidDerivatives.compressibility(fluid, temperature.si(), pressure.si());
        if (!(chi > 0)) {
            throw new MissingInputException(
                    "compressibility of " + fluid.name() + " by " + fluid.model(),
                    "the pressure of a locked liquid",
                    "take a model of the fluid that knows the effect of pressure");
        }
        return chi;
    }

    /**
     * The slope of pressure against temperature.
     *
     * @return dp/dT in Pa/K; negative where the wall grows more than the liquid
     * @throws OutOfRangeException if the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public double slopeSi() {
        PipeWall pipe = wall;
        double growth = pipe == null ? 0 : 3 * pipe.material().linearExpansion().si();
        double stretch = pipe == null ? 0 : pipe.stretchSi();
        return (expansionSi() - growth) / (compressibilitySi() + stretch);
    }

    /**
     * What the pressure rises by for a small warming.
     *
     * @param warming temperature rise
     * @return the slope times the warming, negative if the pressure falls
     * @throws OutOfRangeException if the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public PressureDifference riseFor(TemperatureDifference warming) {
        return PressureDifference.ofSi(slopeSi() * warming.si());
    }

    /**
     * The warming that raises the pressure by a small amount.
     *
     * @param rise pressure rise, such as from the fill to the relief setting
     * @return rise divided by the slope
     * @throws OutOfRangeException if warming does not raise the pressure, or the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public TemperatureDifference warmingFor(PressureDifference rise) {
        double slope = slopeSi();
        if (!(slope > 0)) {
            throw new OutOfRangeException(
                    "slope of the locked liquid",
                    PressureDifference.ofSi(slope).textInBothSystems() + " for each kelvin",
                    "above zero",
                    "this wall grows more than the liquid: warming does not raise the pressure");
        }
        return TemperatureDifference.ofSi(rise.si() / slope);
    }

    /**
     * How the slope was reached.
     *
     * @return one step for each part
     * @throws OutOfRangeException if the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public Workings workings() {
        return LockedLiquidWorkings.of(this);
    }

    /**
     * The slope in words.
     *
     * @param system metric or inch-pound
     * @return such as {@code water locked at 20 degC: +4.52 bar for each K}
     * @throws OutOfRangeException if the model does not answer there
     * @throws MissingInputException if the fluid's model takes no account of pressure
     */
    public String text(UnitSystem system) {
        boolean metric = system == UnitSystem.SI;
        Unit<TemperatureDifference> degree = metric ? Units.KELVIN_DIFFERENCE : Units.FAHRENHEIT_DIFFERENCE;
        PressureDifference slope = PressureDifference.ofSi(slopeSi() / degree.numberOf(1));
        return fluid.name() + " locked at " + temperature.text(system) + ": " + slope.text(system, DIGITS)
                + " for each " + degree;
    }
}
