package org.ullage.examples.flink;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.method.SizingJob;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.uncertainty.SizingUncertainty;
import org.ullage.uncertainty.Uncertain;

/**
 * The columns that a portfolio has beside those of a file of loops: the standard uncertainty of the value in the column of the same name,
 * normally distributed. Blank is certain.
 */
enum SpreadColumn {
    CONTENTS(
            "contents",
            job -> job.loop().contents(),
            (q, value, u) -> q.contents(Uncertain.normal((Volume) value, Volume.parse(u)))),
    COLD("cold", job -> job.temperatures().cold(), (q, value, u) -> q.coldTemperature(temperature(value, u))),
    HOT("hot", job -> job.temperatures().hot(), (q, value, u) -> q.hotTemperature(temperature(value, u))),
    STATIC_HEAD(
            "static_head",
            job -> job.pressures().staticHead(),
            (q, value, u) -> q.staticHead(Uncertain.normal((Length) value, Length.parse(u)))),
    COLD_PRESSURE(
            "cold_pressure",
            job -> job.pressures().coldPressure(),
            (q, value, u) -> q.coldPressure(pressure(value, u))),
    FINAL_PRESSURE(
            "final_pressure",
            job -> job.pressures().finalPressure(),
            (q, value, u) -> q.finalPressure(pressure(value, u))),
    RELIEF_SETTING(
            "relief_setting",
            job -> job.pressures().reliefSetting(),
            (q, value, u) -> q.reliefSetting(pressure(value, u))),
    PRECHARGE("precharge", job -> job.pressures().preCharge(), (q, value, u) -> q.charge(pressure(value, u)));

    /** Puts an uncertain value into a question. */
    @FunctionalInterface
    private interface Adding {
        SizingUncertainty add(SizingUncertainty question, Quantity<?, ?> value, String standardUncertainty);
    }

    private final String column;

    @SuppressWarnings("ImmutableEnumChecker") // these functions hold nothing
    private final Function<SizingJob, @Nullable Quantity<?, ?>> value;

    @SuppressWarnings("ImmutableEnumChecker") // these functions hold nothing
    private final Adding adding;

    SpreadColumn(String column, Function<SizingJob, @Nullable Quantity<?, ?>> value, Adding adding) {
        this.column = column;
        this.value = value;
        this.adding = adding;
    }

    /** The name in the header. */
    String word() {
        return column + "_spread";
    }

    static List<String> words() {
        return Arrays.stream(values()).map(SpreadColumn::word).toList();
    }

    /**
     * Adds a spread to a question.
     *
     * @throws IllegalArgumentException if it cannot be read, stands beside a value that is not given, or reaches where no sizing is possible
     */
    SizingUncertainty spread(SizingUncertainty question, String standardUncertainty) {
        Quantity<?, ?> mean = value.apply(question.job());
        if (mean == null) {
            throw new IllegalArgumentException(word() + ": " + column + " is blank; give it or leave its spread out");
        }
        try {
            return adding.add(question, mean, standardUncertainty);
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException(word() + ": " + refusal.getMessage(), refusal);
        }
    }

    private static Uncertain<Temperature> temperature(Quantity<?, ?> mean, String u) {
        return Uncertain.normal((Temperature) mean, TemperatureDifference.parse(u));
    }

    private static Uncertain<GaugePressure> pressure(Quantity<?, ?> mean, String u) {
        return Uncertain.normal((GaugePressure) mean, PressureDifference.parse(u));
    }
}
