package org.ullage.reference;

import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
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
    PRESSURE_DIFFERENCE(PressureDifference.class, PressureDifference::parse, PressureDifference::parse),
    MASS(Mass.class, Mass::parse, Mass::parse),
    FORCE(Force.class, Force::parse, Force::parse),
    AREA(Area.class, Area::parse, Area::parse),
    LENGTH(Length.class, Length::parse, Length::parse),
    RATIO(Map.of("", 1.0, "%", 0.01)),
    SPECIFIC_ENTHALPY(Map.of("kJ/kg", 1_000.0)),
    HEAT_CAPACITY(Map.of("kJ/(kg K)", 1_000.0)),
    PER_KELVIN(Map.of("1/K", 1.0)),
    PER_PASCAL(Map.of("1/Pa", 1.0)),
    PRESSURE_SLOPE(Map.of("bar/K", 1e5));

    private final @Nullable Class<?> type;
    private final Function<String, Double> value;
    private final Function<String, Double> deviation;

    <Q extends Quantity<Q, ?>> Measure(
            Class<Q> type, Function<String, Q> value, Function<String, ? extends Quantity<?, ?>> deviation) {
        this.type = type;
        this.value = text -> value.apply(text).si();
        this.deviation = text -> deviation.apply(text).si();
    }

    /** A bare number in one of the units, each with its size in coherent SI. */
    Measure(Map<String, Double> units) {
        this.type = null;
        this.value = text -> Figure.number(text) * sizeOf(Figure.unit(text), units);
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

    private static double sizeOf(String unit, Map<String, Double> units) {
        Double size = units.get(unit);
        if (size == null) {
            throw new IllegalArgumentException(
                    "the unit must be one of " + new TreeSet<>(units.keySet()) + ", not \"" + unit + "\"");
        }
        return size;
    }
}
