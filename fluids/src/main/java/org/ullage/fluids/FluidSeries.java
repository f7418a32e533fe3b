package org.ullage.fluids;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/**
 * Density and expansion of a fluid over a span of temperatures: plain arrays for a chart, and a table to print. Expansion
 * counts from the first temperature. Immutable.
 */
public final class FluidSeries implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int MOST_INTERVALS = 100_000;
    private static final int DENSITY_DECIMALS = 2;
    private static final int TEMPERATURE_DECIMALS = 2;

    private final LoopFluid fluid;
    private final double[] kelvins;
    private final double[] densities;
    private final double[] expansions;

    private FluidSeries(LoopFluid fluid, double[] kelvins, double pascals) {
        this.fluid = fluid;
        this.kelvins = kelvins;
        this.densities = new double[kelvins.length];
        this.expansions = new double[kelvins.length];
        double start = fluid.specificVolumeSi(kelvins[0], pascals);
        for (int i = 0; i < kelvins.length; i++) {
            double volume = fluid.specificVolumeSi(kelvins[i], pascals);
            densities[i] = 1 / volume;
            expansions[i] = 100 * (volume - start) / start;
        }
    }

    /**
     * A series with equal steps, at 300 kPa absolute or the vapour pressure at the hotter end where that is higher.
     *
     * @param fluid the fluid
     * @param from first temperature
     * @param to last temperature
     * @param intervals number of steps, 1 to 100 000; one point more comes out
     * @return the series
     * @throws OutOfRangeException if the fluid's model does not reach a temperature, or the number of steps is not allowed
     */
    public static FluidSeries of(LoopFluid fluid, Temperature from, Temperature to, int intervals) {
        return of(fluid, from, to, intervals, AbsolutePressure.ofSi(Expansion.usualPressure(fluid, from, to)));
    }

    /**
     * A series with equal steps at a pressure.
     *
     * @param fluid the fluid
     * @param from first temperature
     * @param to last temperature
     * @param intervals number of steps, 1 to 100 000; one point more comes out
     * @param pressure absolute; most models ignore it
     * @return the series
     * @throws OutOfRangeException if the fluid's model does not reach a state, or the number of steps is not allowed
     */
    public static FluidSeries of(
            LoopFluid fluid, Temperature from, Temperature to, int intervals, AbsolutePressure pressure) {
        if (intervals < 1 || intervals > MOST_INTERVALS) {
            throw new OutOfRangeException(
                    "number of steps", intervals + " steps", "1 to " + MOST_INTERVALS, "give a number in that range");
        }
        double[] kelvins = new double[intervals + 1];
        for (int i = 0; i <= intervals; i++) {
            // weights, so that both ends come out exactly
            kelvins[i] = (from.si() * (intervals - i) + to.si() * i) / intervals;
        }
        return new FluidSeries(fluid, kelvins, pressure.si());
    }

    /**
     * Whose series it is.
     *
     * @return the fluid
     */
    public LoopFluid fluid() {
        return fluid;
    }

    /**
     * The temperatures.
     *
     * @return kelvins, a copy
     */
    public double[] kelvins() {
        return kelvins.clone();
    }

    /**
     * The temperatures as charts show them.
     *
     * @return degrees Celsius, a copy
     */
    public double[] celsius() {
        double[] celsius = new double[kelvins.length];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = Celsius.of(kelvins[i]);
        }
        return celsius;
    }

    /**
     * The densities.
     *
     * @return kilograms per cubic metre, a copy
     */
    public double[] densities() {
        return densities.clone();
    }

    /**
     * The expansions from the first temperature.
     *
     * @return percent of the volume at the first temperature, a copy
     */
    public double[] expansionPercents() {
        return expansions.clone();
    }

    /**
     * The series as a table for people, with fluid, model and source above it.
     *
     * @param system metric (degC, kg/m3) or inch-pound (degF, lb/ft3)
     * @return lines ending in a line feed
     */
    public String text(UnitSystem system) {
        return fluid.name() + "\n" + fluid.model() + " " + fluid.source() + "\n" + FluidText.columns(rows(system));
    }

    /**
     * The series as CSV (RFC 4180) with units in the header.
     *
     * @param system metric (degC, kg/m3) or inch-pound (degF, lb/ft3)
     * @return the header and a line for each temperature
     */
    public String csv(UnitSystem system) {
        return FluidText.csv(rows(system));
    }

    private List<List<String>> rows(UnitSystem system) {
        boolean metric = system == UnitSystem.SI;
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                metric ? "temperature [degC]" : "temperature [degF]",
                metric ? "density [kg/m3]" : "density [lb/ft3]",
                "expansion [%]"));
        for (int i = 0; i < kelvins.length; i++) {
            Temperature temperature = Temperature.ofSi(kelvins[i]);
            rows.add(List.of(
                    FluidText.fixed(temperature.in(metric ? Units.CELSIUS : Units.FAHRENHEIT), TEMPERATURE_DECIMALS),
                    density(densities[i], metric),
                    FluidText.fixed(expansions[i], FluidText.PERCENT_DECIMALS)));
        }
        return rows;
    }

    private static String density(double si, boolean metric) {
        Density density = Density.ofSi(si);
        // a pound per cubic foot is 16 kg/m3, so one decimal more keeps the digits
        return metric
                ? FluidText.fixed(density.in(Units.KILOGRAM_PER_CUBIC_METRE), DENSITY_DECIMALS)
                : FluidText.fixed(density.in(Units.POUND_PER_CUBIC_FOOT), DENSITY_DECIMALS + 1);
    }
}
