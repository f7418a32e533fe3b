package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.FillWindow;

/**
 * Between which pressures a loop may be filled at the temperature of the day, so that the vessel keeps the reserve when the loop is
 * coldest and takes the expansion when it is hottest. A loop that is filled warm, as a chilled loop is, must put its own contraction
 * into the vessel as well. Immutable.
 *
 * <p>With the fluid's specific volume v: contraction to come V_c = V_s (1 - v_min/v_fill), expansion to come V_e = V_s (v_hot/v_fill - 1),
 * v_min being the smallest between coldest and fill temperature (water is densest near 4 degC). The growth of the pipe is left out, which
 * is the safe side for both.
 *
 * @param contraction water the loop takes out of the vessel on its way to the coldest state
 * @param expansion water the vessel takes on the way to the hottest state
 * @param window lowest and highest fill pressure, absolute
 * @param atmosphere pressure of the air that was counted with
 */
public record FillPlan(Volume contraction, Volume expansion, FillWindow window, AbsolutePressure atmosphere)
        implements Serializable {

    /** Points between coldest and fill temperature at which the density is looked at. */
    private static final int POINTS = 64;

    /**
     * Plans the filling of a sized loop.
     *
     * @param sizing the sizing; its pressures, charge and reserve count
     * @param nominal nominal volume of the vessel that was chosen
     * @param fill temperature of the loop when it is filled
     * @return the plan; its window may be closed, see {@link FillWindow#isOpen()}
     * @throws MissingInputException if coldest or hottest temperature are not known
     * @throws OutOfRangeException if the fill temperature is outside the loop's range or the vessel cannot hold the water
     */
    public static FillPlan of(Sizing sizing, Volume nominal, Temperature fill) {
        LoopTemperatures range = sizing.job().temperatures();
        Temperature cold = required(range.cold(), "lowest temperature");
        Temperature hot = required(range.hot(), "highest temperature");
        if (fill.si() < cold.si() || fill.si() > hot.si()) {
            throw new OutOfRangeException(
                    "fill temperature",
                    both(fill),
                    "from the loop's lowest " + both(cold) + " to its highest " + both(hot),
                    "widen the loop's range or fill at another temperature");
        }
        AbsolutePressure air = sizing.atmosphere();
        AbsolutePressure charge = sizing.preCharge().absolute(air);
        AbsolutePressure last = sizing.finalPressure().absolute(air);
        double contents = sizing.job().loop().contents().si();
        LoopFluid fluid = sizing.job().loop().fluid();
        double filled = fluid.specificVolumeSi(fill.si(), last.si());
        double densest = smallestVolume(fluid, cold.si(), fill.si(), last.si());
        Volume contraction = Volume.ofSi(contents * (1 - densest / filled));
        Volume expansion =
                Volume.ofSi(Math.max(0, contents * (fluid.specificVolumeSi(hot.si(), last.si()) / filled - 1)));
        Volume inVessel = sizing.reserveVolume().plus(contraction);
        return new FillPlan(contraction, expansion, FillWindow.of(nominal, charge, last, inVessel, expansion), air);
    }

    /**
     * Lowest fill pressure.
     *
     * @return as a gauge shows it
     */
    public GaugePressure lowest() {
        return window.lowest().gauge(atmosphere);
    }

    /**
     * Highest fill pressure.
     *
     * @return as a gauge shows it
     */
    public GaugePressure highest() {
        return window.highest().gauge(atmosphere);
    }

    /**
     * The plan in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return window.isOpen()
                ? "fill to between " + lowest().text(system) + " and "
                        + highest().text(system)
                : "no fill pressure will do: the vessel would need " + lowest().text(system)
                        + " to keep its reserve but no more than " + highest().text(system)
                        + " to take the expansion; take a larger vessel";
    }

    private static double smallestVolume(LoopFluid fluid, double cold, double fill, double pascals) {
        double smallest = fluid.specificVolumeSi(fill, pascals);
        for (int i = 0; i < POINTS; i++) {
            double kelvins = cold + (fill - cold) * i / POINTS;
            smallest = Math.min(smallest, fluid.specificVolumeSi(kelvins, pascals));
        }
        return smallest;
    }

    private static Temperature required(@Nullable Temperature temperature, String name) {
        if (temperature == null) {
            throw new MissingInputException(name, "a fill plan", "give both ends of the loop's temperature range");
        }
        return temperature;
    }

    private static String both(Temperature temperature) {
        return temperature.text(UnitSystem.SI) + " (" + temperature.text(UnitSystem.IP) + ")";
    }
}
