package org.ullage.method;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;

/** The test water, but compressible: v falls by 5e-9 of itself for each pascal. */
record SoftFluid() implements LoopFluid {

    private static final double COMPRESSIBILITY = 5e-9;

    @Override
    public String name() {
        return "soft water";
    }

    @Override
    public String model() {
        return TestFluid.WATER.model();
    }

    @Override
    public Source source() {
        return TestFluid.WATER.source();
    }

    @Override
    public boolean isWater() {
        return true;
    }

    @Override
    public Temperature lowest() {
        return TestFluid.WATER.lowest();
    }

    @Override
    public Temperature highest() {
        return TestFluid.WATER.highest();
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        return TestFluid.WATER.specificVolumeSi(kelvins, pascals) * (1 - COMPRESSIBILITY * pascals);
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        return TestFluid.WATER.vapourPressureSi(kelvins);
    }

    @Override
    public Source vapourPressureSource() {
        return source();
    }
}
