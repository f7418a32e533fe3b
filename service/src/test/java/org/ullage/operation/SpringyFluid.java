package org.ullage.operation;

import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;

/**
 * A fluid of constant expansion and compressibility: v = 0.001 m3/kg x exp(alpha (T - 20 degC) - chi (p - 3 bar)), boiling as the
 * handbooks' 100 degC at 1 bar.
 */
record SpringyFluid(double alpha, double chi) implements LoopFluid {

    @Override
    public String name() {
        return "springy fluid";
    }

    @Override
    public String model() {
        return "exponential";
    }

    @Override
    public Source source() {
        return Source.computed("test", "exponential");
    }

    @Override
    public boolean isWater() {
        return true;
    }

    @Override
    public Temperature lowest() {
        return Temperature.celsius(0);
    }

    @Override
    public Temperature highest() {
        return Temperature.celsius(200);
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        return 0.001 * Math.exp(alpha * (kelvins - 293.15) - chi * (pascals - 3e5));
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
