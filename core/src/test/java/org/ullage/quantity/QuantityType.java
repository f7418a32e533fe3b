package org.ullage.quantity;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/** One quantity type with its three general factories, so that a property is stated once and held by all of them. */
record QuantityType<Q extends Quantity<Q, D>, D>(
        String name, DoubleFunction<Q> ofSi, FromUnit<Q, D> of, Function<String, Q> parse) {

    static final List<QuantityType<?, ?>> ALL = List.of(
            new QuantityType<>("gauge pressure", GaugePressure::ofSi, GaugePressure::of, GaugePressure::parse),
            new QuantityType<>(
                    "absolute pressure", AbsolutePressure::ofSi, AbsolutePressure::of, AbsolutePressure::parse),
            new QuantityType<>(
                    "pressure difference", PressureDifference::ofSi, PressureDifference::of, PressureDifference::parse),
            new QuantityType<>("temperature", Temperature::ofSi, Temperature::of, Temperature::parse),
            new QuantityType<>(
                    "temperature difference",
                    TemperatureDifference::ofSi,
                    TemperatureDifference::of,
                    TemperatureDifference::parse),
            new QuantityType<>("volume", Volume::ofSi, Volume::of, Volume::parse),
            new QuantityType<>("length", Length::ofSi, Length::of, Length::parse),
            new QuantityType<>("mass", Mass::ofSi, Mass::of, Mass::parse),
            new QuantityType<>("density", Density::ofSi, Density::of, Density::parse),
            new QuantityType<>("specific volume", SpecificVolume::ofSi, SpecificVolume::of, SpecificVolume::parse),
            new QuantityType<>("power", Power::ofSi, Power::of, Power::parse),
            new QuantityType<>("area", Area::ofSi, Area::of, Area::parse),
            new QuantityType<>("moment", Moment::ofSi, Moment::of, Moment::parse),
            new QuantityType<>("section modulus", SectionModulus::ofSi, SectionModulus::of, SectionModulus::parse),
            new QuantityType<>("second moment of area", SecondMoment::ofSi, SecondMoment::of, SecondMoment::parse),
            new QuantityType<>("stress", Stress::ofSi, Stress::of, Stress::parse),
            new QuantityType<>("force", Force::ofSi, Force::of, Force::parse),
            new QuantityType<>("mass fraction", MassFraction::ofSi, MassFraction::of, MassFraction::parse),
            new QuantityType<>("volume fraction", VolumeFraction::ofSi, VolumeFraction::of, VolumeFraction::parse),
            new QuantityType<>(
                    "linear expansion coefficient",
                    LinearExpansion::ofSi,
                    LinearExpansion::of,
                    LinearExpansion::parse));

    /** A value every type allows. */
    static final double ALLOWED_BY_ALL = 0.5;

    interface FromUnit<Q, D> {
        Q of(double number, Unit<D> unit);
    }

    Q example() {
        return ofSi.apply(ALLOWED_BY_ALL);
    }

    List<Unit<D>> units() {
        return example().kind().units();
    }

    String suffix() {
        return example().kind().suffix();
    }

    boolean isFraction() {
        return name.endsWith("fraction");
    }

    boolean allowsNegative() {
        return List.of(
                        "gauge pressure",
                        "pressure difference",
                        "temperature difference",
                        "volume",
                        "length",
                        "power",
                        "force",
                        "moment",
                        "stress")
                .contains(name);
    }

    boolean allowsZero() {
        return !List.of(
                        "absolute pressure",
                        "temperature",
                        "density",
                        "specific volume",
                        "area",
                        "section modulus",
                        "second moment of area")
                .contains(name);
    }

    /** Turns any finite number into the nearest kind of number this type may hold. */
    double allowed(double any) {
        double value = allowsNegative() ? any : Math.abs(any);
        if (isFraction() && value > 1) {
            return 1 / value;
        }
        return value == 0 && !allowsZero() ? Double.MIN_VALUE : value;
    }

    @Override
    public String toString() {
        return name;
    }
}
