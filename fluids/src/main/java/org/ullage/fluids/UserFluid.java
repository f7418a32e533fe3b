package org.ullage.fluids;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

/**
 * A fluid of the user's own, from a function or from a density table ({@link UserFluidTable}). It does not depend on pressure.
 * Its vapour pressure is that of pure water unless {@link #withVapourPressure(VapourPressureFunction, Source)} says otherwise:
 * right on the safe side for water with something less volatile in it, wrong for anything that boils more easily than water.
 * Immutable; serializable if the functions it was made from are.
 *
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the serial tag belongs on a class, whatever the check says
public final class UserFluid implements LoopFluid {

    private static final long serialVersionUID = 1L;

    /** Points at which a function is tried before it is accepted. */
    private static final int TRIALS = 101;

    private final String name;
    private final String model;
    private final Source source;
    private final double lowestKelvins;
    private final double highestKelvins;
    private final DensityCurve curve;
    private final @Nullable VapourPressureFunction vapourPressure;
    private final Source vapourPressureSource;

    UserFluid(
            String name, String model, Source source, double lowestKelvins, double highestKelvins, DensityCurve curve) {
        this(name, model, source, lowestKelvins, highestKelvins, curve, null, WaterVapour.SOURCE);
    }

    private UserFluid(
            String name,
            String model,
            Source source,
            double lowestKelvins,
            double highestKelvins,
            DensityCurve curve,
            @Nullable VapourPressureFunction vapourPressure,
            Source vapourPressureSource) {
        this.name = name;
        this.model = model;
        this.source = source;
        this.lowestKelvins = lowestKelvins;
        this.highestKelvins = highestKelvins;
        this.curve = curve;
        this.vapourPressure = vapourPressure;
        this.vapourPressureSource = vapourPressureSource;
    }

    /**
     * A fluid from a function. It is tried at 101 temperatures across the range: the density has to fall with temperature, but
     * for a maximum below 10 degC such as water's.
     *
     * @param name the fluid for people
     * @param density its density
     * @param lowest lowest temperature the function answers for
     * @param highest highest temperature the function answers for
     * @param source where the function comes from
     * @return the fluid
     * @throws OutOfRangeException if the range is empty or the density rises with temperature
     */
    public static UserFluid ofFunction(
            String name, DensityFunction density, Temperature lowest, Temperature highest, Source source) {
        if (lowest.compareTo(highest) >= 0) {
            throw new OutOfRangeException(
                    "highest temperature of " + name,
                    Celsius.text(highest.si()),
                    "above the lowest, " + Celsius.text(lowest.si()),
                    "exchange the two or give a wider range");
        }
        DensityCurve curve =
                (kelvins, pascals) -> 1 / density.at(Temperature.ofSi(kelvins)).si();
        DensityChecks.requireFalling(name, trials(curve, lowest.si(), highest.si()));
        return new UserFluid(name, "function of the user", source, lowest.si(), highest.si(), curve);
    }

    private static List<DensityRow> trials(DensityCurve curve, double lowest, double highest) {
        List<DensityRow> rows = new ArrayList<>();
        for (int i = 0; i < TRIALS; i++) {
            double kelvins = (lowest * (TRIALS - 1 - i) + highest * i) / (TRIALS - 1);
            double density = 1 / curve.specificVolume(kelvins, 0);
            rows.add(new DensityRow(0, Celsius.of(kelvins), density, 0));
        }
        return rows;
    }

    /**
     * The same fluid with a vapour pressure of its own.
     *
     * @param function the vapour pressure within the fluid's range
     * @param from where it comes from
     * @return a copy
     */
    public UserFluid withVapourPressure(VapourPressureFunction function, Source from) {
        return new UserFluid(name, model, source, lowestKelvins, highestKelvins, curve, function, from);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String model() {
        return model;
    }

    @Override
    public Source source() {
        return source;
    }

    @Override
    public boolean isWater() {
        return false;
    }

    @Override
    public Temperature lowest() {
        return Temperature.ofSi(lowestKelvins);
    }

    @Override
    public Temperature highest() {
        return Temperature.ofSi(highestKelvins);
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        double volume = curve.specificVolume(kelvins, pascals);
        if (!(volume > 0 && volume <= Double.MAX_VALUE)) {
            throw new OutOfRangeException(
                    "specific volume of " + name,
                    volume + " m3/kg at " + Celsius.text(kelvins),
                    "above zero and finite",
                    "correct the table or the function");
        }
        return volume;
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        requireInRange(kelvins);
        VapourPressureFunction own = vapourPressure;
        return own == null
                ? WaterVapour.pressure(kelvins)
                : own.at(Temperature.ofSi(kelvins)).si();
    }

    @Override
    public Source vapourPressureSource() {
        return vapourPressureSource;
    }

    private void requireInRange(double kelvins) {
        if (!Celsius.isWithin(kelvins, lowestKelvins, highestKelvins)) {
            throw new OutOfRangeException(
                    "temperature of " + name,
                    Celsius.text(kelvins),
                    Celsius.text(lowestKelvins) + " to " + Celsius.text(highestKelvins),
                    "give a temperature inside the range, or a table or function that reaches further");
        }
    }

    /**
     * The fluid and how it is described.
     *
     * @return name and model
     */
    @Override
    public String toString() {
        return name + " (" + model + ")";
    }
}
