package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingFunction;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.method.VariedJob;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * The question how sure a sizing is: a job, a method, and the inputs of which more is known than one value. An uncertain input takes the
 * place of the job's own value. Inputs count as independent of each other; those without spread are taken from the job as they are.
 * Immutable.
 */
public final class SizingUncertainty implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Method method;
    private final SizingJob job;
    private final EnumMap<SizingInput, Uncertain<?>> spreads;

    private SizingUncertainty(Method method, SizingJob job, Map<SizingInput, Uncertain<?>> spreads) {
        this.method = method;
        this.job = job;
        this.spreads = new EnumMap<>(SizingInput.class);
        this.spreads.putAll(spreads);
    }

    /**
     * Begins with everything certain.
     *
     * @param method the method
     * @param job what is to be sized
     * @return the question, to which uncertain inputs are added
     */
    public static SizingUncertainty of(Method method, SizingJob job) {
        return new SizingUncertainty(method, job, Map.of());
    }

    /**
     * Uncertain contents.
     *
     * @param contents of the loop, above zero throughout
     * @return a copy with them
     * @throws OutOfRangeException if the spread reaches zero
     */
    public SizingUncertainty contents(Uncertain<Volume> contents) {
        return with(SizingInput.CONTENTS, contents);
    }

    /**
     * An uncertain lowest temperature.
     *
     * @param temperature within the fluid's model and below the highest temperature throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches beyond
     */
    public SizingUncertainty coldTemperature(Uncertain<Temperature> temperature) {
        return with(SizingInput.COLD_TEMPERATURE, temperature);
    }

    /**
     * An uncertain highest temperature.
     *
     * @param temperature in the sense of the method, within the fluid's model and above the lowest temperature throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches beyond
     */
    public SizingUncertainty hotTemperature(Uncertain<Temperature> temperature) {
        return with(SizingInput.HOT_TEMPERATURE, temperature);
    }

    /**
     * An uncertain static head.
     *
     * @param height of the highest point above the vessel, zero or more throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches below zero, or a cold pressure is given, beside which it has no effect
     */
    public SizingUncertainty staticHead(Uncertain<Length> height) {
        return with(SizingInput.STATIC_HEAD, height);
    }

    /**
     * An uncertain cold pressure.
     *
     * @param pressure at the vessel, above vacuum throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches vacuum
     */
    public SizingUncertainty coldPressure(Uncertain<GaugePressure> pressure) {
        return with(SizingInput.COLD_PRESSURE, pressure);
    }

    /**
     * An uncertain gas charge.
     *
     * @param pressure with the water side empty, above vacuum throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches vacuum
     */
    public SizingUncertainty charge(Uncertain<GaugePressure> pressure) {
        return with(SizingInput.CHARGE, pressure);
    }

    /**
     * An uncertain final pressure.
     *
     * @param pressure at the vessel, above vacuum throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches vacuum
     */
    public SizingUncertainty finalPressure(Uncertain<GaugePressure> pressure) {
        return with(SizingInput.FINAL_PRESSURE, pressure);
    }

    /**
     * An uncertain pressure at which the relief valve opens, such as {@link Uncertain#opening}.
     *
     * @param pressure at the valve, above vacuum throughout
     * @return a copy with it
     * @throws OutOfRangeException if the spread reaches vacuum
     */
    public SizingUncertainty reliefSetting(Uncertain<GaugePressure> pressure) {
        return with(SizingInput.RELIEF_SETTING, pressure);
    }

    private SizingUncertainty with(SizingInput input, Uncertain<?> value) {
        EnumMap<SizingInput, Uncertain<?>> more = new EnumMap<>(spreads);
        more.put(input, value);
        SpreadChecks.require(method, job, more);
        return new SizingUncertainty(method, job, more);
    }

    /**
     * The method.
     *
     * @return as given
     */
    public Method method() {
        return method;
    }

    /**
     * The job.
     *
     * @return as given
     */
    public SizingJob job() {
        return job;
    }

    /**
     * The inputs of which more is known than one value.
     *
     * @return by input, in the order of {@link SizingInput}
     */
    public Map<SizingInput, Uncertain<?>> spreads() {
        return Collections.unmodifiableMap(spreads);
    }

    /**
     * The sizing with every uncertain input at its mean.
     *
     * @return the answer without regard to the spreads
     * @throws OutOfRangeException if the method refuses it
     * @throws MissingInputException if an input is missing
     */
    public Sizing centre() {
        double[] means =
                inputs().stream().mapToDouble(input -> input.spread().mean()).toArray();
        return method.size(jobs().at(means));
    }

    /**
     * Answers by the law of propagation of uncertainty.
     *
     * @return the required volume with its standard uncertainty
     * @throws OutOfRangeException if the method refuses the means or a standard uncertainty from them
     * @throws MissingInputException if an input is missing
     */
    public LinearSizing linear() {
        Sizing centre = centre();
        return new LinearSizing(this, centre, LinearPropagation.of(requiredVolume(centre), inputs()));
    }

    /**
     * Answers by drawing.
     *
     * @param draws how many, from 1000 to 1e9
     * @param seed any number; the same gives the same answer to the last bit
     * @return the distribution of the required volume
     * @throws OutOfRangeException if the method refuses the means or nearly all draws, or the number of draws is not allowed
     * @throws MissingInputException if an input is missing
     */
    public SampledSizing sampled(int draws, long seed) {
        Sizing centre = centre();
        return new SampledSizing(this, centre, MonteCarlo.of(requiredVolume(centre), inputs(), draws, seed));
    }

    /**
     * The chance that the relief valve lifts with a given vessel: that the pressure which the gas law gives for the drawn inputs reaches
     * the drawn opening pressure (without a relief setting: the final pressure).
     *
     * @param nominal nominal volume of the vessel, above zero
     * @param draws how many, from 1000 to 1e9
     * @param seed any number
     * @return the chance, with the draws it was counted from
     * @throws OutOfRangeException if the volume is not above zero, the vessel is an open tank, the method refuses the means or nearly all
     *     draws, or the number of draws is not allowed
     * @throws MissingInputException if an input is missing
     */
    public LiftChance liftChance(Volume nominal, int draws, long seed) {
        return LiftChance.of(this, centre(), nominal, draws, seed);
    }

    private ModelFunction requiredVolume(Sizing centre) {
        SizingFunction function = SizingFunction.around(method, jobs(), centre.job());
        return function::cubicMetres;
    }

    String stated(SizingInput input, UnitSystem system) {
        Uncertain<?> value = spreads.get(input);
        return value == null ? "certain" : value.text(system);
    }

    /** Inputs whose spread is a single value vary too: it may be another value than the job's. */
    VariedJob jobs() {
        return new VariedJob(job, spreads.keySet());
    }

    List<ModelInput> inputs() {
        return DrawnInputs.of(jobs().ownRow(method), spreads);
    }
}
