package org.ullage.method;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;

/** The absolute pressures of one sizing on bare SI numbers: given ones as they are, the others by the method's rules. */
final class SizingPressures implements Serializable {

    private static final long serialVersionUID = 1L;

    final double ambient;
    final double cold;
    final double last;
    final double charge;

    SizingPressures(Method method, SizingJob job) {
        PressureInputs given = job.pressures();
        AbsolutePressure site = given.atmosphere();
        this.ambient = site == null ? method.atmosphere().pressure().si() : site.si();
        if (job.vessel().kind() == VesselKind.OPEN) {
            this.cold = ambient;
            this.last = ambient;
            this.charge = ambient;
        } else {
            this.cold = cold(method, job);
            this.last = last(method, given);
            this.charge = charge(method, job);
            GasLaw.requireOrder(
                    AbsolutePressure.ofSi(charge * method.gasTemperatures().coldRatio()),
                    AbsolutePressure.ofSi(cold),
                    AbsolutePressure.ofSi(last));
        }
    }

    private double cold(Method method, SizingJob job) {
        PressureInputs given = job.pressures();
        GaugePressure fixed = method.coldPressure().fixed();
        if (fixed != null) {
            FixedPressures.requireCold(fixed, given, method);
            return fixed.si() + ambient;
        }
        GaugePressure stated = given.coldPressure();
        if (stated != null) {
            return stated.si() + ambient;
        }
        Length head = given.staticHead();
        if (head == null) {
            throw new MissingInputException(
                    "static head or cold pressure",
                    method.title(),
                    "give one of the two (gauge pressure at the vessel)");
        }
        double vapour = method.coldPressure().countsVapourPressure() ? vapourAtHottest(method, job) : 0;
        return method.coldPressure().pascals(head.si(), vapour, ambient)
                + given.place().coldRaisePascals();
    }

    private static double vapourAtHottest(Method method, SizingJob job) {
        double hot = job.requireHot(method.hotBasis(), method.title()).si();
        return job.loop().fluid().vapourPressureSi(hot);
    }

    private double last(Method method, PressureInputs given) {
        GaugePressure fixed = method.finalPressure().fixed();
        if (fixed != null) {
            FixedPressures.requireFinal(fixed, given, method);
            return fixed.si() + ambient;
        }
        GaugePressure stated = given.finalPressure();
        GaugePressure setting = given.reliefSetting();
        VesselPlace place = given.place();
        if (stated != null) {
            requireValveShut(stated, setting, place);
            return stated.si() + ambient;
        }
        double limit = weakestLimit(place);
        if (setting == null && limit == Double.POSITIVE_INFINITY) {
            throw new MissingInputException(
                    "relief setting or final pressure", method.title(), "give one of the two (gauge pressure)");
        }
        double byValve = setting == null
                ? Double.POSITIVE_INFINITY
                : given.finalRule(method.finalPressure()).pascals(setting.si(), ambient) + place.valveToVesselPascals();
        return Math.min(byValve, limit + ambient);
    }

    static double weakestLimit(VesselPlace place) {
        VesselPlace.WeakestPart weakest = place.weakest();
        return weakest == null ? Double.POSITIVE_INFINITY : weakest.vesselPascals();
    }

    private static void requireValveShut(GaugePressure last, @Nullable GaugePressure setting, VesselPlace place) {
        if (setting == null) {
            return;
        }
        GaugePressure opening = GaugePressure.ofSi(setting.si() + place.valveToVesselPascals());
        if (GasLaw.isAbove(last.si(), opening.si())) {
            throw new OutOfRangeException(
                    "final pressure",
                    last.textInBothSystems(),
                    "at or below the relief setting as it stands at the vessel, " + opening.textInBothSystems(),
                    "the valve would lift first: lower the final pressure");
        }
    }

    private double charge(Method method, SizingJob job) {
        GaugePressure stated = job.pressures().preCharge();
        double pascals =
                stated == null ? method.charge(job.vessel().kind()).pascals(cold, ambient) : stated.si() + ambient;
        if (!(pascals > 0)) {
            throw new OutOfRangeException(
                    "gas charge",
                    GaugePressure.ofSi(pascals - ambient).text(UnitSystem.SI),
                    "above vacuum, that is above -"
                            + GaugePressure.ofSi(ambient).text(UnitSystem.SI),
                    "check the sign, and that a gauge pressure was meant");
        }
        return pascals;
    }
}
