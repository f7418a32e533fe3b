package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
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
import org.ullage.vessel.GasTemperatures;

/**
 * Between which pressures a loop may be filled at the temperature of the day, so that the vessel keeps the reserve when the loop is
 * coldest and takes the expansion when it is hottest. A loop that is filled warm, as a chilled loop is, must put its own contraction
 * into the vessel as well. Immutable.
 *
 * <p>With the fluid's specific volume v and the pipe's growth 3 alpha dt where the method counts it: contraction to come
 * V_c = V_s (v_fill/v_min - 1 - 3 alpha dt), expansion to come V_e = V_s (v_hot/v_fill - 1 - 3 alpha dt), v_min being where the loop
 * holds most between coldest and fill temperature (water is densest near 4 degC). For a solar loop that may boil V_e is the rule's own
 * expansion and what vapour pushes out.
 *
 * <p>Where the method was given gas temperatures of its own, the charge follows them: hot as the method has it, at the filling as
 * stated or as far between cold and hot as the loop is.
 *
 * @param contraction water the loop takes out of the vessel on its way to the coldest state, as warm as it was filled
 * @param expansion water the vessel takes on the way to the hottest state, with what vapour pushes out
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
     * @throws MissingInputException if the coldest temperature, or for a loop that does not boil the hottest, is not known
     * @throws OutOfRangeException if the fill temperature is outside the loop's range or the vessel cannot hold the water
     */
    public static FillPlan of(Sizing sizing, Volume nominal, Temperature fill) {
        return of(sizing, nominal, fill, gasBetweenColdAndHot(sizing, fill));
    }

    /**
     * Plans the filling of a sized loop when the gas temperature of the day is known.
     *
     * @param sizing the sizing; its pressures, charge and reserve count
     * @param nominal nominal volume of the vessel that was chosen
     * @param fill temperature of the loop when it is filled
     * @param gas temperature of the gas in the vessel when the loop is filled
     * @return the plan; its window may be closed, see {@link FillWindow#isOpen()}
     * @throws MissingInputException if the coldest temperature, or for a loop that does not boil the hottest, is not known
     * @throws OutOfRangeException if the fill temperature is outside the loop's range or the vessel cannot hold the water
     */
    public static FillPlan of(Sizing sizing, Volume nominal, Temperature fill, Temperature gas) {
        LoopTemperatures range = sizing.job().temperatures();
        Temperature cold = required(range.cold(), "lowest temperature");
        requireWithin(fill, cold, range.hot());
        LoopSwell swell = new LoopSwell(sizing, cold);
        Volume contraction = swell.contraction(fill, POINTS);
        Volume expansion = sizing.vapourVolume().si() > 0
                ? sizing.expansionVolume().plus(sizing.vapourVolume())
                : swell.expansion(fill, required(range.hot(), "highest temperature"));
        AbsolutePressure air = sizing.atmosphere();
        GasTemperatures temperatures = sizing.method().gasTemperatures();
        double charge = sizing.preCharge().absolute(air).si();
        FillWindow window = FillWindow.of(
                nominal,
                AbsolutePressure.ofSi(charge * temperatures.ratio(gas)),
                AbsolutePressure.ofSi(charge * temperatures.hotRatio()),
                sizing.finalPressure().absolute(air),
                sizing.reserveVolume().plus(contraction),
                expansion);
        return new FillPlan(contraction, expansion, window, air);
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

    /** For a loop without a highest temperature, one that may boil, the gas counts as with the loop cold. */
    private static Temperature gasBetweenColdAndHot(Sizing sizing, Temperature fill) {
        GasTemperatures gas = sizing.method().gasTemperatures();
        LoopTemperatures range = sizing.job().temperatures();
        Temperature cold = range.cold();
        Temperature hot = range.hot();
        if (cold == null || hot == null) {
            return gas.cold();
        }
        double share = (fill.si() - cold.si()) / (hot.si() - cold.si());
        return Temperature.ofSi(
                gas.cold().si() + share * (gas.hot().si() - gas.cold().si()));
    }

    private static void requireWithin(Temperature fill, Temperature cold, @Nullable Temperature hot) {
        if (fill.si() < cold.si() || (hot != null && fill.si() > hot.si())) {
            String upper = hot == null ? " upwards" : " to its highest " + hot.textInBothSystems();
            throw new OutOfRangeException(
                    "fill temperature",
                    fill.textInBothSystems(),
                    "from the loop's lowest " + cold.textInBothSystems() + upper,
                    "widen the loop's range or fill at another temperature");
        }
    }

    private static Temperature required(@Nullable Temperature temperature, String name) {
        if (temperature == null) {
            throw new MissingInputException(name, "a fill plan", "give both ends of the loop's temperature range");
        }
        return temperature;
    }
}
