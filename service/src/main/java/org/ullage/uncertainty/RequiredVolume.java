package org.ullage.uncertainty;

import org.jspecify.annotations.Nullable;
import org.ullage.method.Method;
import org.ullage.method.SizingAtTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.Quantity;
import org.ullage.vessel.VesselKind;

/**
 * The required volume in m3 for rows of drawn numbers. Where the temperatures are certain a closed vessel goes the quick way; where that
 * has no answer the whole method is asked, which says why.
 */
final class RequiredVolume implements ModelFunction {

    private static final int CONTENTS = SizingInput.CONTENTS.place();
    private static final int STATIC_HEAD = SizingInput.STATIC_HEAD.place();
    private static final int COLD_PRESSURE = SizingInput.COLD_PRESSURE.place();
    private static final int CHARGE = SizingInput.CHARGE.place();
    private static final int FINAL_PRESSURE = SizingInput.FINAL_PRESSURE.place();
    private static final int RELIEF_SETTING = SizingInput.RELIEF_SETTING.place();

    private final Method method;
    private final DrawnJobs jobs;
    private final @Nullable SizingAtTemperatures quick;
    private final boolean[] isGiven = new boolean[SizingInput.values().length];

    /**
     * @param centre the job at the means, which the method can size
     */
    RequiredVolume(Method method, DrawnJobs jobs, SizingJob centre, boolean temperaturesAreCertain) {
        this.method = method;
        this.jobs = jobs;
        PressureInputs given = centre.pressures();
        isGiven[STATIC_HEAD] = isGiven(given.staticHead());
        isGiven[COLD_PRESSURE] = isGiven(given.coldPressure());
        isGiven[CHARGE] = isGiven(given.preCharge());
        isGiven[FINAL_PRESSURE] = isGiven(given.finalPressure());
        isGiven[RELIEF_SETTING] = isGiven(given.reliefSetting());
        boolean isQuick = temperaturesAreCertain && centre.vessel().kind() != VesselKind.OPEN;
        this.quick = isQuick ? SizingAtTemperatures.of(method, centre) : null;
    }

    private static boolean isGiven(@Nullable Quantity<?, ?> quantity) {
        return quantity != null;
    }

    @Override
    public double value(double[] row) {
        if (quick != null) {
            double volume = quick.cubicMetres(
                    row[CONTENTS],
                    of(STATIC_HEAD, row),
                    of(COLD_PRESSURE, row),
                    of(CHARGE, row),
                    of(FINAL_PRESSURE, row),
                    of(RELIEF_SETTING, row));
            if (Double.isFinite(volume)) {
                return volume;
            }
        }
        return method.size(jobs.at(row)).requiredVolume().si();
    }

    private double of(int input, double[] row) {
        return isGiven[input] ? row[input] : Double.NaN;
    }
}
