package org.ullage.uncertainty;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/**
 * The job that belongs to a row of drawn numbers, one for each {@link SizingInput} in its order; those that are not uncertain stay as
 * the job has them.
 *
 * @param job the job as given
 * @param uncertain the inputs that are drawn
 */
record DrawnJobs(SizingJob job, Set<SizingInput> uncertain) {

    SizingJob at(double[] row) {
        return new SizingJob(loop(row), job.vessel(), temperatures(row), pressures(row));
    }

    private boolean draws(SizingInput input) {
        return uncertain.contains(input);
    }

    private Loop loop(double[] row) {
        return draws(SizingInput.CONTENTS)
                ? job.loop().holding(Volume.ofSi(row[SizingInput.CONTENTS.place()]))
                : job.loop();
    }

    private LoopTemperatures temperatures(double[] row) {
        LoopTemperatures given = job.temperatures();
        Temperature cold = given.cold();
        if (draws(SizingInput.COLD_TEMPERATURE)) {
            cold = Temperature.ofSi(row[SizingInput.COLD_TEMPERATURE.place()]);
        }
        if (draws(SizingInput.HOT_TEMPERATURE)) {
            // whichever of the three the method means
            Temperature hot = Temperature.ofSi(row[SizingInput.HOT_TEMPERATURE.place()]);
            return new LoopTemperatures(cold, hot, hot, hot);
        }
        return draws(SizingInput.COLD_TEMPERATURE)
                ? new LoopTemperatures(cold, given.hot(), given.mean(), given.safety())
                : given;
    }

    private PressureInputs pressures(double[] row) {
        PressureInputs given = job.pressures();
        Length head =
                draws(SizingInput.STATIC_HEAD) ? Length.ofSi(row[SizingInput.STATIC_HEAD.place()]) : given.staticHead();
        return new PressureInputs(
                gauge(SizingInput.COLD_PRESSURE, row, given.coldPressure()),
                gauge(SizingInput.FINAL_PRESSURE, row, given.finalPressure()),
                head,
                gauge(SizingInput.RELIEF_SETTING, row, given.reliefSetting()),
                gauge(SizingInput.CHARGE, row, given.preCharge()),
                given.atmosphere(),
                given.reliefMargin(),
                given.place());
    }

    private @Nullable GaugePressure gauge(SizingInput input, double[] row, @Nullable GaugePressure given) {
        return draws(input) ? GaugePressure.ofSi(row[input.place()]) : given;
    }
}
