package org.ullage.method;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/**
 * A job some of whose numbers vary. A row has a number for each {@link SizingInput} at its {@link SizingInput#place place}, in SI units;
 * from it the job takes those that vary, the others stay as they are. Immutable.
 *
 * @param job the job as given
 * @param varied the inputs that vary
 */
public record VariedJob(SizingJob job, Set<SizingInput> varied) implements Serializable {

    static final int PLACES = SizingInput.values().length;

    /**
     * Copies the set.
     *
     * @param job the job as given
     * @param varied the inputs that vary
     */
    public VariedJob {
        Set<SizingInput> copy = EnumSet.noneOf(SizingInput.class);
        copy.addAll(varied);
        varied = Collections.unmodifiableSet(copy);
    }

    /**
     * The job that belongs to a row.
     *
     * @param row a number for each input, in SI units
     * @return the job
     * @throws OutOfRangeException if the row is too short or a number is not one of its quantity
     */
    public SizingJob at(double[] row) {
        requireWhole(row, 0);
        return new SizingJob(loop(row), job.vessel(), temperatures(row), pressures(row));
    }

    /**
     * The row of the job itself.
     *
     * @param method which says what temperature it means by the highest one
     * @return a number for each input, in SI units; 0 for one that was not given
     */
    public double[] ownRow(Method method) {
        double[] row = new double[PLACES];
        for (SizingInput input : SizingInput.values()) {
            Quantity<?, ?> own = own(input, method);
            row[input.place()] = own == null ? 0 : own.si();
        }
        return row;
    }

    /** Refuses a row that lacks places, or begins where there is none. */
    static void requireWhole(double[] rows, int first) {
        if (first < 0 || rows.length - first < PLACES) {
            throw new OutOfRangeException(
                    "length of the row",
                    Integer.toString(rows.length - first),
                    PLACES + " or more, one for each input, from place " + first,
                    "begin with the job's own row");
        }
    }

    /** Inputs that have a number in every row: given or varied. */
    Set<SizingInput> present(Method method) {
        Set<SizingInput> present = EnumSet.noneOf(SizingInput.class);
        for (SizingInput input : SizingInput.values()) {
            if (varied.contains(input) || own(input, method) != null) {
                present.add(input);
            }
        }
        return present;
    }

    private @Nullable Quantity<?, ?> own(SizingInput input, Method method) {
        PressureInputs given = job.pressures();
        return switch (input) {
            case CONTENTS -> job.loop().contents();
            case COLD_TEMPERATURE -> job.temperatures().cold();
            case HOT_TEMPERATURE -> method.hotBasis().of(job.temperatures());
            case STATIC_HEAD -> given.staticHead();
            case COLD_PRESSURE -> given.coldPressure();
            case CHARGE -> given.preCharge();
            case FINAL_PRESSURE -> given.finalPressure();
            case RELIEF_SETTING -> given.reliefSetting();
        };
    }

    private boolean varies(SizingInput input) {
        return varied.contains(input);
    }

    private Loop loop(double[] row) {
        return varies(SizingInput.CONTENTS)
                ? job.loop().holding(Volume.ofSi(row[SizingInput.CONTENTS.place()]))
                : job.loop();
    }

    private LoopTemperatures temperatures(double[] row) {
        LoopTemperatures given = job.temperatures();
        Temperature cold = given.cold();
        if (varies(SizingInput.COLD_TEMPERATURE)) {
            cold = Temperature.ofSi(row[SizingInput.COLD_TEMPERATURE.place()]);
        }
        if (varies(SizingInput.HOT_TEMPERATURE)) {
            // whichever of the three the method means
            Temperature hot = Temperature.ofSi(row[SizingInput.HOT_TEMPERATURE.place()]);
            return new LoopTemperatures(cold, hot, hot, hot);
        }
        return varies(SizingInput.COLD_TEMPERATURE)
                ? new LoopTemperatures(cold, given.hot(), given.mean(), given.safety())
                : given;
    }

    private PressureInputs pressures(double[] row) {
        PressureInputs given = job.pressures();
        Length head = varies(SizingInput.STATIC_HEAD)
                ? Length.ofSi(row[SizingInput.STATIC_HEAD.place()])
                : given.staticHead();
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
        return varies(input) ? GaugePressure.ofSi(row[input.place()]) : given;
    }
}
