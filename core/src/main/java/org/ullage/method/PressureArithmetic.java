package org.ullage.method;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Quantity;

/**
 * The pressures of a closed vessel as functions of bare SI numbers, without checks: gauge in, absolute out. An input that is not given
 * is NaN.
 */
final class PressureArithmetic implements Serializable {

    private static final long serialVersionUID = 1L;

    final double ambient;
    private final ColdPressureRule coldRule;
    private final FinalPressureRule finalRule;
    private final ChargeRule chargeRule;
    private final double coldRaise;
    private final double valveToVessel;
    private final double weakest;

    PressureArithmetic(Method method, SizingJob job) {
        PressureInputs given = job.pressures();
        VesselPlace place = given.place();
        this.ambient = ambient(method, given);
        this.coldRule = method.coldPressure();
        this.finalRule = given.finalRule(method.finalPressure());
        this.chargeRule = method.charge(job.vessel().kind());
        this.coldRaise = place.coldRaisePascals();
        this.valveToVessel = place.valveToVesselPascals();
        this.weakest = weakestLimit(place);
    }

    /** The air at the site, or the method's own. */
    static double ambient(Method method, PressureInputs given) {
        AbsolutePressure site = given.atmosphere();
        return site == null ? method.atmosphere().pressure().si() : site.si();
    }

    /** The gauge pressure at the vessel that the weakest part of the loop bears; infinite if none is named. */
    static double weakestLimit(VesselPlace place) {
        VesselPlace.WeakestPart weakest = place.weakest();
        return weakest == null ? Double.POSITIVE_INFINITY : weakest.vesselPascals();
    }

    static double orNaN(@Nullable Quantity<?, ?> quantity) {
        return quantity == null ? Double.NaN : quantity.si();
    }

    /** A stated cold pressure as it is, else by the static head; the vapour pressure is absolute. */
    double cold(double stated, double headMetres, double vapourPressure) {
        return Double.isNaN(stated)
                ? coldRule.pascals(headMetres, vapourPressure, ambient) + coldRaise
                : stated + ambient;
    }

    /** A stated final pressure as it is, else by the valve and the weakest part; infinite if neither is known. */
    double last(double stated, double setting) {
        if (!Double.isNaN(stated)) {
            return stated + ambient;
        }
        double byValve =
                Double.isNaN(setting) ? Double.POSITIVE_INFINITY : finalRule.pascals(setting, ambient) + valveToVessel;
        return Math.min(byValve, weakest + ambient);
    }

    /** The gauge pressure at the vessel at which the valve lifts. */
    double opening(double setting) {
        return setting + valveToVessel;
    }

    /** A stated charge as it is, else by the rule from the absolute cold pressure. */
    double charge(double stated, double cold) {
        return Double.isNaN(stated) ? chargeRule.pascals(cold, ambient) : stated + ambient;
    }
}
