package org.ullage.fluids;

import java.io.Serializable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Constant;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/**
 * How much a fluid expands between two states: v2/v1 - 1, both specific volumes from the same fluid and so from the same model.
 * The pipes' own expansion is not in it. Immutable.
 */
public final class Expansion implements Serializable {

    private static final long serialVersionUID = 1L;

    /** A usual pressure in a closed loop; it matters only to models that depend on pressure, and there 1 bar is 46 ppm. */
    private static final double USUAL_PASCALS = new Constant("p", 300_000, "Pa", GlycolSources.USUAL_PRESSURE).value();

    private final LoopFluid fluid;
    private final Temperature from;
    private final Temperature to;
    private final AbsolutePressure fromPressure;
    private final AbsolutePressure toPressure;
    private final SpecificVolume fromVolume;
    private final SpecificVolume toVolume;

    private Expansion(
            LoopFluid fluid,
            Temperature from,
            AbsolutePressure fromPressure,
            Temperature to,
            AbsolutePressure toPressure) {
        this.fluid = fluid;
        this.from = from;
        this.to = to;
        this.fromPressure = fromPressure;
        this.toPressure = toPressure;
        this.fromVolume = fluid.specificVolume(from, fromPressure);
        this.toVolume = fluid.specificVolume(to, toPressure);
    }

    /**
     * The expansion at one pressure: 300 kPa absolute, or the fluid's vapour pressure at the hotter temperature where that is
     * higher. Most models ignore it.
     *
     * @param fluid the fluid
     * @param from temperature at the start
     * @param to temperature at the end; below the start the expansion is negative
     * @return the expansion
     * @throws OutOfRangeException if the fluid's model does not reach one of the temperatures
     */
    public static Expansion between(LoopFluid fluid, Temperature from, Temperature to) {
        AbsolutePressure pressure = AbsolutePressure.ofSi(usualPressure(fluid, from, to));
        return new Expansion(fluid, from, pressure, to, pressure);
    }

    /**
     * The expansion between two states with a pressure of their own, for models that depend on it.
     *
     * @param fluid the fluid
     * @param from temperature at the start
     * @param fromPressure absolute pressure at the start
     * @param to temperature at the end
     * @param toPressure absolute pressure at the end
     * @return the expansion
     * @throws OutOfRangeException if the fluid's model does not reach one of the states or it is not liquid there
     */
    public static Expansion between(
            LoopFluid fluid,
            Temperature from,
            AbsolutePressure fromPressure,
            Temperature to,
            AbsolutePressure toPressure) {
        return new Expansion(fluid, from, fromPressure, to, toPressure);
    }

    static double usualPressure(LoopFluid fluid, Temperature one, Temperature other) {
        double hotter = Math.max(one.si(), other.si());
        return Math.max(USUAL_PASCALS, fluid.vapourPressureSi(hotter));
    }

    /**
     * Whose expansion it is.
     *
     * @return the fluid
     */
    public LoopFluid fluid() {
        return fluid;
    }

    /**
     * The temperature at the start.
     *
     * @return as given
     */
    public Temperature from() {
        return from;
    }

    /**
     * The temperature at the end.
     *
     * @return as given
     */
    public Temperature to() {
        return to;
    }

    /**
     * The pressure at the start.
     *
     * @return absolute, as given or chosen
     */
    public AbsolutePressure fromPressure() {
        return fromPressure;
    }

    /**
     * The pressure at the end.
     *
     * @return absolute, as given or chosen
     */
    public AbsolutePressure toPressure() {
        return toPressure;
    }

    /**
     * The density at the start.
     *
     * @return by the fluid's model
     */
    public Density fromDensity() {
        return fromVolume.density();
    }

    /**
     * The density at the end.
     *
     * @return by the fluid's model
     */
    public Density toDensity() {
        return toVolume.density();
    }

    /**
     * The volume of the same mass at the end over that at the start, v2/v1.
     *
     * @return above zero
     */
    public double ratio() {
        return toVolume.si() / fromVolume.si();
    }

    /**
     * The expansion as part of the volume at the start, v2/v1 - 1.
     *
     * @return such as 0.0535; negative when it contracts
     */
    public double fraction() {
        return (toVolume.si() - fromVolume.si()) / fromVolume.si();
    }

    /**
     * The expansion in percent of the volume at the start.
     *
     * @return such as 5.35
     */
    public double percent() {
        return 100 * fraction();
    }

    /**
     * The mean coefficient of volume expansion: {@link #fraction()} over the temperature difference, so referred to the volume
     * at the start.
     *
     * @return per kelvin
     * @throws OutOfRangeException if the two temperatures are the same
     */
    public double meanCoefficientPerKelvin() {
        double kelvins = to.si() - from.si();
        double coefficient = fraction() / kelvins;
        if (!Double.isFinite(coefficient)) {
            throw new OutOfRangeException(
                    "temperature difference",
                    kelvins + " K",
                    "other than zero for a mean coefficient of expansion",
                    "give two different temperatures");
        }
        return coefficient;
    }

    /**
     * The expansion in one line.
     *
     * @return fluid, temperatures and percent
     */
    @Override
    public String toString() {
        return fluid.name() + " by " + fluid.model() + ", " + from.text(Units.CELSIUS) + " to " + to.text(Units.CELSIUS)
                + ": " + FluidText.fixed(percent(), FluidText.PERCENT_DECIMALS) + " %";
    }
}
