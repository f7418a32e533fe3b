package org.ullage.sizing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.ullage.loop.LoopFluid;
import org.ullage.method.SizingInput;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/** One input of a {@link SizingSweep} and the values it takes, in the order given. */
public sealed interface SweepAxis extends Serializable permits NumberAxis, FluidAxis {

    /**
     * Contents of the loop.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis contents(List<Volume> values) {
        return new NumberAxis(SizingInput.CONTENTS, values);
    }

    /**
     * Lowest (or fill) temperatures.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis coldTemperature(List<Temperature> values) {
        return new NumberAxis(SizingInput.COLD_TEMPERATURE, values);
    }

    /**
     * Highest temperatures in the sense of the method.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis hotTemperature(List<Temperature> values) {
        return new NumberAxis(SizingInput.HOT_TEMPERATURE, values);
    }

    /**
     * Heights of the highest point above the vessel.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis staticHead(List<Length> values) {
        return new NumberAxis(SizingInput.STATIC_HEAD, values);
    }

    /**
     * Lowest pressures at the vessel.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis coldPressure(List<GaugePressure> values) {
        return new NumberAxis(SizingInput.COLD_PRESSURE, values);
    }

    /**
     * Gas charges.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis charge(List<GaugePressure> values) {
        return new NumberAxis(SizingInput.CHARGE, values);
    }

    /**
     * Highest pressures at the vessel.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis finalPressure(List<GaugePressure> values) {
        return new NumberAxis(SizingInput.FINAL_PRESSURE, values);
    }

    /**
     * Settings of the relief valve.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis reliefSetting(List<GaugePressure> values) {
        return new NumberAxis(SizingInput.RELIEF_SETTING, values);
    }

    /**
     * Fluids: other concentrations, or other models of one fluid.
     *
     * @param values one or more
     * @return the axis
     * @throws OutOfRangeException if there is no value
     */
    static SweepAxis fluids(List<LoopFluid> values) {
        return new FluidAxis(values);
    }

    /**
     * Values with equal steps between them.
     *
     * @param from the first
     * @param to the last
     * @param count how many, two or more
     * @param ofSi makes a quantity from its number in SI, such as {@code Volume::ofSi}
     * @param <Q> the quantity
     * @return the values in order
     * @throws OutOfRangeException if the count is below two
     */
    static <Q extends Quantity<Q, ?>> List<Q> evenly(Q from, Q to, int count, DoubleFunction<Q> ofSi) {
        if (count < 2) {
            throw new OutOfRangeException(
                    "number of values", String.valueOf(count), "2 or more", "give at least both ends");
        }
        List<Q> values = new ArrayList<>(List.of(from));
        double step = (to.si() - from.si()) / (count - 1);
        for (int i = 1; i < count - 1; i++) {
            values.add(ofSi.apply(from.si() + i * step));
        }
        values.add(to);
        return List.copyOf(values);
    }

    /**
     * What varies, in words.
     *
     * @return such as {@code hot temperature}
     */
    String words();

    /**
     * The values for people.
     *
     * @param system metric or inch-pound
     * @return one label for each value
     */
    List<String> labels(UnitSystem system);

    /**
     * How many values there are.
     *
     * @return one or more
     */
    int size();
}
