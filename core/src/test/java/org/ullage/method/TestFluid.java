package org.ullage.method;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;

/** A fluid whose answers can be worked out by hand: v = 0.001 m3/kg x (1 + 0.0005/K above 0 degC), boiling at 100 degC at 1 bar. */
public record TestFluid(String name, boolean isWater) implements LoopFluid {

    public static final TestFluid WATER = new TestFluid("test water", true);
    public static final TestFluid MIXTURE = new TestFluid("test mixture", false);

    @Override
    public String model() {
        return "straight line";
    }

    @Override
    public Source source() {
        return Source.computed("test", "straight line");
    }

    @Override
    public Temperature lowest() {
        return Temperature.celsius(-50);
    }

    @Override
    public Temperature highest() {
        return Temperature.celsius(200);
    }

    @Override
    public boolean isCompressible() {
        return false;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        return 0.001 * (1 + 0.0005 * (kelvins - 273.15));
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        return 100_000 * Math.exp((kelvins - 373.15) / 28);
    }

    @Override
    public Source vapourPressureSource() {
        return source();
    }
}
