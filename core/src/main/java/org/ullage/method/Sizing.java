package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * The answer to a {@link SizingJob} by a {@link Method}: required volume and everything on the way to it. Immutable; it keeps
 * its inputs, so workings, warnings and cautions are derived when they are asked for.
 */
public final class Sizing implements Serializable {

    private static final long serialVersionUID = 1L;

    private final SizingNumbers numbers;

    Sizing(SizingNumbers numbers) {
        this.numbers = numbers;
    }

    /**
     * The method that gave this answer.
     *
     * @return the method
     */
    public Method method() {
        return numbers.method;
    }

    /**
     * What was sized.
     *
     * @return the job as it was given
     */
    public SizingJob job() {
        return numbers.job;
    }

    /**
     * Smallest nominal volume that does the job. Take the next larger made size.
     *
     * @return the volume, above zero
     */
    public Volume requiredVolume() {
        return Volume.ofSi(numbers.water() * numbers.volumePerWater());
    }

    /**
     * Smallest nominal volume without regard to the acceptance limit: by the gas law, not below the least the rule allows (for an
     * open tank: by its allowance).
     *
     * @return the volume
     */
    public Volume gasLawVolume() {
        return Volume.ofSi(numbers.water() * numbers.gasVolumePerWater);
    }

    /**
     * What decided the required volume.
     *
     * @return the condition that asks for the largest vessel
     */
    public Governing governing() {
        if (numbers.job.vessel().kind() == VesselKind.OPEN) {
            return Governing.OPEN_ALLOWANCE;
        }
        if (numbers.gasVolumePerWater < numbers.limitVolumePerWater) {
            return Governing.ACCEPTANCE_LIMIT;
        }
        Constant least = numbers.method.leastVolumePerWater();
        return least != null && numbers.gasVolumePerWater <= least.value() ? Governing.LEAST_VOLUME : Governing.GAS_LAW;
    }

    /**
     * Net expansion of the loop: the fluid's expansion less the pipe credit, without reserve.
     *
     * @return the volume
     */
    public Volume expansionVolume() {
        return Volume.ofSi(numbers.expansion);
    }

    /**
     * Water the method keeps in reserve.
     *
     * @return the volume, zero if the method has no reserve
     */
    public Volume reserveVolume() {
        return Volume.ofSi(numbers.reserve);
    }

    /**
     * Liquid that vapour pushes out of a solar loop in stagnation, as the method counts it.
     *
     * @return the volume, zero if the method is not for loops that boil
     */
    public Volume vapourVolume() {
        return Volume.ofSi(numbers.vapour);
    }

    /**
     * Water the vessel must take in all between cold and final pressure: net expansion, reserve and what vapour pushes out.
     *
     * @return the volume
     */
    public Volume acceptanceVolume() {
        return Volume.ofSi(numbers.water());
    }

    /**
     * Gas charge to set with the water side empty and the gas at the temperature the method charges it at (20 degC unless
     * the method was given gas temperatures of its own), before connection. For an open tank zero.
     *
     * @return the gauge pressure
     */
    public GaugePressure preCharge() {
        return numbers.chargeAbsolute().gauge(atmosphere());
    }

    /**
     * Lowest pressure at the vessel, cold. For an open tank zero.
     *
     * @return the gauge pressure
     */
    public GaugePressure coldPressure() {
        return numbers.coldAbsolute().gauge(atmosphere());
    }

    /**
     * Highest pressure at the vessel, hot. For an open tank zero.
     *
     * @return the gauge pressure
     */
    public GaugePressure finalPressure() {
        return numbers.finalAbsolute().gauge(atmosphere());
    }

    /**
     * The air pressure that was counted with: the site's if it was given, else the method's.
     *
     * @return the absolute pressure
     */
    public AbsolutePressure atmosphere() {
        return numbers.ambientPressure();
    }

    /**
     * What the reader of this answer must know about it: limits of the method that this job touches, inputs that are missing or
     * that the method ignores.
     *
     * @return the warnings, may be empty
     */
    public List<Caution> warnings() {
        return SizingWarnings.of(numbers);
    }

    /**
     * The dangers of the work, and where local codes and licensed practice decide.
     *
     * @return the cautions, never empty
     */
    public List<Caution> cautions() {
        return SafetyCautions.of(numbers.job);
    }

    /**
     * How the answer was reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        return SizingWorkings.of(numbers);
    }
}
