package org.ullage.examples.sweep;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.ullage.fluids.Fluids;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.sizing.SweepAxis;

/** Reads an axis: a column of the loop file, then its values as {@code from..to} or separated by semicolons. */
final class AxisText {

    private static final String RANGE = "..";
    private static final String COLUMNS =
            "contents, cold, hot, static_head, cold_pressure, precharge, final_pressure, relief_setting, fluid";

    private final String values;
    private final int steps;

    private AxisText(String values, int steps) {
        this.values = values;
        this.steps = steps;
    }

    /**
     * Reads one.
     *
     * @param text such as {@code hot=60 degC..90 degC} or {@code fluid=water; propylene glycol 30 vol%}
     * @param steps how many values a range has
     * @throws IllegalArgumentException if the column is none of those or a value cannot be read
     */
    static SweepAxis read(String text, int steps) {
        int equals = text.indexOf('=');
        String column = equals < 0 ? "" : text.substring(0, equals).strip();
        AxisText axis = new AxisText(text.substring(equals + 1), steps);
        return switch (column) {
            case "contents" -> SweepAxis.contents(axis.quantities(Volume::parse, Volume::ofSi));
            case "cold" -> SweepAxis.coldTemperature(axis.quantities(Temperature::parse, Temperature::ofSi));
            case "hot" -> SweepAxis.hotTemperature(axis.quantities(Temperature::parse, Temperature::ofSi));
            case "static_head" -> SweepAxis.staticHead(axis.quantities(Length::parse, Length::ofSi));
            case "cold_pressure" -> SweepAxis.coldPressure(axis.gauge());
            case "precharge" -> SweepAxis.charge(axis.gauge());
            case "final_pressure" -> SweepAxis.finalPressure(axis.gauge());
            case "relief_setting" -> SweepAxis.reliefSetting(axis.gauge());
            case "fluid" -> SweepAxis.fluids(axis.listed(Fluids::parse));
            default ->
                throw new IllegalArgumentException("\"" + text + "\" is no axis: write column=from..to or"
                        + " column=value; value, the column being one of " + COLUMNS);
        };
    }

    private List<GaugePressure> gauge() {
        return quantities(GaugePressure::parse, GaugePressure::ofSi);
    }

    private <Q extends Quantity<Q, ?>> List<Q> quantities(Function<String, Q> reading, DoubleFunction<Q> ofSi) {
        int middle = values.indexOf(RANGE);
        if (middle < 0) {
            return listed(reading);
        }
        Q from = reading.apply(values.substring(0, middle).strip());
        Q to = reading.apply(values.substring(middle + RANGE.length()).strip());
        return SweepAxis.evenly(from, to, steps, ofSi);
    }

    private <T> List<T> listed(Function<String, T> reading) {
        return Arrays.stream(values.split(";", -1))
                .map(String::strip)
                .map(reading)
                .toList();
    }
}
