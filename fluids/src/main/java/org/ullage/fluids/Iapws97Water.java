package org.ullage.fluids;

import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Liquid water by region 1 of the IAPWS industrial formulation. */
final class Iapws97Water extends WaterModel {

    private static final long serialVersionUID = 1L;

    Iapws97Water() {
        super(
                "IAPWS-IF97",
                Iapws97.SOURCE,
                Temperature.kelvins(Iapws97.LOWEST_TEMPERATURE.value()),
                Temperature.kelvins(Iapws97.HIGHEST_TEMPERATURE.value()),
                Units.CELSIUS);
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        Iapws97.requirePressure(pascals);
        if (!Iapws97Region4.isLiquid(kelvins, pascals)) {
            throw WaterRefusal.boiling(kelvins, pascals, Iapws97Region4.pressure(kelvins));
        }
        return Iapws97Region1.specificVolume(kelvins, pascals);
    }

    private Object readResolve() {
        return Water.IAPWS_IF97;
    }
}
