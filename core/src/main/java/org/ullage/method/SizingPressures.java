package org.ullage.method;

import java.io.Serializable;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
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
        if (job.vessel().kind() == VesselKind.OPEN) {
            this.ambient = PressureArithmetic.ambient(method, job.pressures());
            this.cold = ambient;
            this.last = ambient;
            this.charge = ambient;
        } else {
            PressureArithmetic arithmetic = new PressureArithmetic(method, job);
            this.ambient = arithmetic.ambient;
            this.cold = cold(arithmetic, method, job);
            this.last = last(arithmetic, method, job.pressures());
            this.charge = charge(arithmetic, job.pressures());
            GasLaw.requireOrder(
                    AbsolutePressure.ofSi(charge * method.gasTemperatures().coldRatio()),
                    AbsolutePressure.ofSi(cold),
                    AbsolutePressure.ofSi(last));
        }
    }

    private static double cold(PressureArithmetic arithmetic, Method method, SizingJob job) {
        PressureInputs given = job.pressures();
        GaugePressure fixed = method.coldPressure().fixed();
        if (fixed != null) {
            FixedPressures.requireCold(fixed, given, method);
            return fixed.si() + arithmetic.ambient;
        }
        GaugePressure stated = given.coldPressure();
        if (stated == null && given.staticHead() == null) {
            throw new MissingInputException(
                    "static head or cold pressure",
                    method.title(),
                    "give one of the two (gauge pressure at the vessel)");
        }
        boolean countsVapour = stated == null && method.coldPressure().countsVapourPressure();
        return arithmetic.cold(
                PressureArithmetic.orNaN(stated),
                PressureArithmetic.orNaN(given.staticHead()),
                countsVapour ? vapourAtHottest(method, job) : 0);
    }

    private static double vapourAtHottest(Method method, SizingJob job) {
        double hot = job.requireHot(method.hotBasis(), method.title()).si();
        return job.loop().fluid().vapourPressureSi(hot);
    }

    private static double last(PressureArithmetic arithmetic, Method method, PressureInputs given) {
        GaugePressure fixed = method.finalPressure().fixed();
        if (fixed != null) {
            FixedPressures.requireFinal(fixed, given, method);
            return fixed.si() + arithmetic.ambient;
        }
        GaugePressure stated = given.finalPressure();
        GaugePressure setting = given.reliefSetting();
        if (stated != null && setting != null) {
            requireValveShut(stated, GaugePressure.ofSi(arithmetic.opening(setting.si())));
        }
        double pascals = arithmetic.last(PressureArithmetic.orNaN(stated), PressureArithmetic.orNaN(setting));
        if (pascals == Double.POSITIVE_INFINITY) {
            throw new MissingInputException(
                    "relief setting or final pressure", method.title(), "give one of the two (gauge pressure)");
        }
        return pascals;
    }

    private static void requireValveShut(GaugePressure last, GaugePressure opening) {
        if (GasLaw.isAbove(last.si(), opening.si())) {
            throw new OutOfRangeException(
                    "final pressure",
                    last.textInBothSystems(),
                    "at or below the relief setting as it stands at the vessel, " + opening.textInBothSystems(),
                    "the valve would lift first: lower the final pressure");
        }
    }

    private double charge(PressureArithmetic arithmetic, PressureInputs given) {
        double pascals = arithmetic.charge(PressureArithmetic.orNaN(given.preCharge()), cold);
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
