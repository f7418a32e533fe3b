package org.ullage.reference;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;

/** A kind of figure: how its text is read, and how a deviation from it is read. */
@SuppressWarnings("ImmutableEnumChecker") // the functions are method references without state
enum Measure {
    VOLUME(Volume.class, Volume::parse, Volume::parse),
    SPECIFIC_VOLUME(SpecificVolume.class, SpecificVolume::parse, SpecificVolume::parse),
    DENSITY(Density.class, Density::parse, Density::parse),
    ABSOLUTE_PRESSURE(AbsolutePressure.class, AbsolutePressure::parse, PressureDifference::parse),
    GAUGE_PRESSURE(GaugePressure.class, GaugePressure::parse, PressureDifference::parse),
    TEMPERATURE(Temperature.class, Temperature::parse, TemperatureDifference::parse),
    RATIO(Measure::ratioUnit),
    SPECIFIC_ENTHALPY(unit -> inThousands(unit, "kJ/kg")),
    HEAT_CAPACITY(unit -> inThousands(unit, "kJ/(kg K)"));

    private static final double PERCENT = 0.01;

    private final @Nullable Class<?> type;
    private final Function<String, Double> value;
    private final Function<String, Double> deviation;

    <Q extends Quantity<Q, ?>> Measure(
            Class<Q> type, Function<String, Q> value, Function<String, ? extends Quantity<?, ?>> deviation) {
        this.type = type;
        this.value = text -> value.apply(text).si();
        this.deviation = text -> deviation.apply(text).si();
    }

    Measure(Function<String, Double> siOfUnit) {
        this.type = null;
        this.value = text -> Figure.number(text) * siOfUnit.apply(Figure.unit(text));
        this.deviation = value;
    }

    /** The SI value of a text such as {@code 15 gal}. */
    double read(String text) {
        return value.apply(text);
    }

    /** The SI size of a deviation such as {@code 0.5 gal} or {@code 0.1 K}. */
    double readDeviation(String text) {
        return deviation.apply(text);
    }

    /** The quantity type an answer must have; null for a bare number in coherent SI. */
    @Nullable
    Class<?> type() {
        return type;
    }

    String typeName() {
        return type == null ? "a bare number" : type.getSimpleName();
    }

    private static Double ratioUnit(String unit) {
        return switch (unit) {
            case "" -> 1.0;
            case "%" -> PERCENT;
            default -> throw new IllegalArgumentException("a ratio is a pure number or a number of %, not of " + unit);
        };
    }

    private static Double inThousands(String unit, String expected) {
        if (!unit.equals(expected)) {
            throw new IllegalArgumentException("the unit must be " + expected + ", not \"" + unit + "\"");
        }
        return 1_000.0;
    }
}
