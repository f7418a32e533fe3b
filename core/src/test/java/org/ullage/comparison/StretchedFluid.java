package org.ullage.comparison;

import org.ullage.loop.LoopFluid;
import org.ullage.method.TestFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;

/** The test water with its expansion from 10 degC multiplied. */
record StretchedFluid(double factor) implements LoopFluid {

    private static final double TEN_DEGREES = 283.15;

    @Override
    public String name() {
        return "stretched";
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
        return false;
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
        double cold = TestFluid.WATER.specificVolumeSi(TEN_DEGREES, pascals);
        return cold + factor * (TestFluid.WATER.specificVolumeSi(kelvins, pascals) - cold);
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        return TestFluid.WATER.vapourPressureSi(kelvins);
    }

    @Override
    public Source vapourPressureSource() {
        return TestFluid.WATER.source();
    }
}
