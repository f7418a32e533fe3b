package org.ullage.fuzz;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Force;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Moment;
import org.ullage.quantity.Power;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;

/** Quantities as the trade has them, and beyond. */
final class Values {

    private static final Map<Class<?>, Usual<?>> USUAL = new LinkedHashMap<>();

    static {
        add(Volume.class, 0.005, 5, Volume::ofSi);
        add(Temperature.class, 275, 370, Temperature::ofSi);
        add(TemperatureDifference.class, 0.2, 60, TemperatureDifference::ofSi);
        add(GaugePressure.class, 3e4, 6e5, GaugePressure::ofSi);
        add(AbsolutePressure.class, 9e4, 7e5, AbsolutePressure::ofSi);
        add(PressureDifference.class, 1e3, 1e5, PressureDifference::ofSi);
        add(Length.class, 0.01, 20, Length::ofSi);
        add(Area.class, 0.05, 200, Area::ofSi);
        add(Mass.class, 1, 300, Mass::ofSi);
        add(Density.class, 900, 1100, Density::ofSi);
        add(SpecificVolume.class, 0.9e-3, 1.1e-3, SpecificVolume::ofSi);
        add(Power.class, 1e3, 1e6, Power::ofSi);
        add(Force.class, 10, 1e4, Force::ofSi);
        add(Moment.class, 1, 1e3, Moment::ofSi);
        add(Stress.class, 1e7, 2e11, Stress::ofSi);
        add(SectionModulus.class, 1e-7, 1e-4, SectionModulus::ofSi);
        add(SecondMoment.class, 1e-9, 1e-5, SecondMoment::ofSi);
        add(MassFraction.class, 0.1, 0.6, MassFraction::ofSi);
        add(VolumeFraction.class, 0.1, 0.6, VolumeFraction::ofSi);
        add(LinearExpansion.class, 1e-6, 3e-5, LinearExpansion::ofSi);
    }

    private static final List<Class<?>> KINDS = List.copyOf(USUAL.keySet());

    private Values() {}

    private record Usual<Q>(double low, double high, DoubleFunction<Q> make) {}

    private static <Q extends Quantity<?, ?>> void add(Class<Q> type, double low, double high, DoubleFunction<Q> make) {
        USUAL.put(type, new Usual<>(low, high, make));
    }

    /** The kinds of quantity. */
    static List<Class<?>> kinds() {
        return KINDS;
    }

    /** A value of a kind of quantity; refused by the library when the drawn number is not allowed. */
    static <Q> Q of(Class<Q> kind, Draw draw) {
        Usual<?> usual = USUAL.get(kind);
        return kind.cast(usual.make.apply(draw.number(usual.low, usual.high)));
    }

    static Volume volume(Draw draw) {
        return draw.bold() ? Volume.ofSi(draw.edge()) : Volume.ofSi(draw.magnitude(0.01, 50));
    }

    static Temperature celsius(Draw draw, double low, double high) {
        return Temperature.celsius(draw.chance(0.05) ? draw.of(0.0, 4.0, 30.0, 100.0, 0.01) : draw.number(low, high));
    }

    static GaugePressure bar(Draw draw, double low, double high) {
        return GaugePressure.bar(draw.number(low, high));
    }
}
