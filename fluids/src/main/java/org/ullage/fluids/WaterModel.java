package org.ullage.fluids;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;

/**
 * What the models of plain water share: the name, a temperature range and the saturation line. Immutable. Each model is one
 * constant of {@link Water} and stays it when written and read back.
 */
abstract class WaterModel implements LoopFluid {

    private static final long serialVersionUID = 1L;

    private final String model;
    private final Source source;
    private final Temperature lowest;
    private final Temperature highest;
    // a model is read back as its constant of Water, so what cannot be written need not be
    private final transient Unit<Temperature> unit;
    private final double lowestKelvins;
    private final double highestKelvins;

    /** A model with its range and the unit in which a refusal names temperatures. */
    WaterModel(String model, Source source, Temperature lowest, Temperature highest, Unit<Temperature> unit) {
        this.model = model;
        this.source = source;
        this.lowest = lowest;
        this.highest = highest;
        this.unit = unit;
        this.lowestKelvins = lowest.si();
        this.highestKelvins = highest.si();
    }

    @Override
    public final String name() {
        return "water";
    }

    @Override
    public final String model() {
        return model;
    }

    @Override
    public final Source source() {
        return source;
    }

    @Override
    public final boolean isWater() {
        return true;
    }

    @Override
    public final Temperature lowest() {
        return lowest;
    }

    @Override
    public final Temperature highest() {
        return highest;
    }

    @Override
    public final double vapourPressureSi(double kelvins) {
        requireInRange(kelvins);
        return Iapws97Region4.pressure(kelvins);
    }

    @Override
    public final boolean isLiquidSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        return Iapws97Region4.isLiquid(kelvins, pascals);
    }

    @Override
    public final Source vapourPressureSource() {
        return Iapws97.SOURCE;
    }

    @Override
    public final String toString() {
        return name() + " (" + model + ")";
    }

    final void requireInRange(double kelvins) {
        // written so that a NaN fails it
        if (!(kelvins >= lowestKelvins && kelvins <= highestKelvins)) {
            throw WaterRefusal.temperature(kelvins, lowestKelvins, highestKelvins, unit);
        }
    }
}
