package org.ullage.reference;

import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;

/**
 * Water with the expansion and the compressibility that a source gives for one state, so that its example is repeated with its own data.
 *
 * @param at the temperature they hold for
 * @param under the pressure they hold for
 * @param expansivity (1/v) dv/dT in 1/K
 * @param compressibility -(1/v) dv/dp in 1/Pa
 */
record GivenDerivatives(Temperature at, AbsolutePressure under, double expansivity, double compressibility)
        implements LoopFluid {

    private static final double SPECIFIC_VOLUME = 1e-3;

    @Override
    public String name() {
        return "water";
    }

    @Override
    public String model() {
        return "expansion and compressibility as given";
    }

    @Override
    public Source source() {
        return Source.given();
    }

    @Override
    public Temperature lowest() {
        return Water.IAPWS_IF97.lowest();
    }

    @Override
    public Temperature highest() {
        return Water.IAPWS_IF97.highest();
    }

    @Override
    public boolean isWater() {
        return true;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        return SPECIFIC_VOLUME
                * (1 + expansivity * (kelvins - at.si()))
                * (1 - compressibility * (pascals - under.si()));
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        return Water.IAPWS_IF97.vapourPressureSi(kelvins);
    }

    @Override
    public Source vapourPressureSource() {
        return Water.IAPWS_IF97.vapourPressureSource();
    }
}
