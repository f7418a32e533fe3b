package org.ullage.method;

import java.io.Serializable;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.vessel.GasLaw;

/**
 * The pressures of one closed vessel again and again from other inputs at the same temperatures: what {@link SizingPressures} finds once,
 * as functions of bare SI numbers. An input that is not given is NaN.
 */
final class PressuresAtTemperatures implements Serializable {

    private static final long serialVersionUID = 1L;

    private final ColdPressureRule coldRule;
    private final FinalPressureRule finalRule;
    private final ChargeRule chargeRule;
    private final double ambient;
    private final double vapour;
    private final double coldRaise;
    private final double valveToVessel;
    private final double weakest;
    private final boolean isFixed;

    /**
     * @param vapourPressure absolute vapour pressure of the fluid at the highest temperature
     */
    PressuresAtTemperatures(SizingNumbers numbers, double vapourPressure) {
        PressureInputs given = numbers.job.pressures();
        VesselPlace place = given.place();
        this.coldRule = numbers.method.coldPressure();
        this.finalRule = given.finalRule(numbers.method.finalPressure());
        this.chargeRule = numbers.method.charge(numbers.job.vessel().kind());
        this.ambient = numbers.pressures.ambient;
        this.vapour = coldRule.countsVapourPressure() ? vapourPressure : 0;
        this.coldRaise = place.coldRaisePascals();
        this.valveToVessel = place.valveToVesselPascals();
        this.weakest = SizingPressures.weakestLimit(place);
        this.isFixed =
                coldRule.fixed() != null || numbers.method.finalPressure().fixed() != null;
    }

    /** Absolute; NaN for a rule with one fixed pressure, which has checks of its own. */
    double cold(double headMetres, double stated) {
        if (isFixed) {
            return Double.NaN;
        }
        return Double.isNaN(stated) ? coldRule.pascals(headMetres, vapour, ambient) + coldRaise : stated + ambient;
    }

    /** Absolute; NaN if the relief valve would lift below the stated pressure. */
    double last(double stated, double setting) {
        if (Double.isNaN(stated)) {
            double byValve = Double.isNaN(setting)
                    ? Double.POSITIVE_INFINITY
                    : finalRule.pascals(setting, ambient) + valveToVessel;
            return Math.min(byValve, weakest + ambient);
        }
        return GasLaw.isAbove(stated, setting + valveToVessel) ? Double.NaN : stated + ambient;
    }

    /** Absolute. */
    double charge(double stated, double cold) {
        return Double.isNaN(stated) ? chargeRule.pascals(cold, ambient) : stated + ambient;
    }
}
