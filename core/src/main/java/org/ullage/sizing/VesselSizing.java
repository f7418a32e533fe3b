package org.ullage.sizing;

import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselType;

/**
 * Sizes an expansion vessel. Each step is a type of its own, so the compiler asks for loop, temperatures, vessel and both
 * pressures; what may be left out has a default that the workings show. Every step is immutable and may be kept and re-used.
 */
public final class VesselSizing {

    private VesselSizing() {}

    /**
     * Begins with the loop.
     *
     * @param loop contents, pipe and fluid
     * @return the step that asks for the temperatures
     */
    public static TemperatureStep forLoop(Loop loop) {
        return new TemperatureStep(loop);
    }

    /** Asks for the temperatures. */
    public static final class TemperatureStep {

        private final Loop loop;

        private TemperatureStep(Loop loop) {
            this.loop = loop;
        }

        /**
         * Gives both ends of the temperature range.
         *
         * @param cold lowest (or fill) temperature
         * @param hot highest temperature, in the sense of the method ({@link Method#hotBasis()})
         * @return the step that asks for the vessel
         * @throws OutOfRangeException if the highest is not above the lowest
         */
        public VesselStep between(Temperature cold, Temperature hot) {
            return temperatures(LoopTemperatures.between(cold, hot));
        }

        /**
         * Gives all temperatures that are known, for methods that do not mean the same one by hot.
         *
         * @param temperatures the temperatures
         * @return the step that asks for the vessel
         */
        public VesselStep temperatures(LoopTemperatures temperatures) {
            return new VesselStep(loop, temperatures);
        }
    }

    /** Asks for the kind of vessel. */
    public static final class VesselStep {

        private final Loop loop;
        private final LoopTemperatures temperatures;

        private VesselStep(Loop loop, LoopTemperatures temperatures) {
            this.loop = loop;
            this.temperatures = temperatures;
        }

        /**
         * A closed vessel, or an open one that is to be compared with closed ones.
         *
         * @param vessel kind and acceptance limit
         * @return the step that asks for the cold pressure
         */
        public ColdPressureStep vessel(VesselType vessel) {
            return new ColdPressureStep(job(vessel));
        }

        /**
         * An open tank, which needs no pressures.
         *
         * @return the step that asks for the method
         */
        public MethodStep openTank() {
            return new MethodStep(job(VesselType.open()));
        }

        private SizingJob job(VesselType vessel) {
            return new SizingJob(loop, vessel, temperatures, PressureInputs.NONE);
        }
    }

    /** Asks for the pressure when cold. */
    public static final class ColdPressureStep {

        private final SizingJob job;

        private ColdPressureStep(SizingJob job) {
            this.job = job;
        }

        /**
         * Lets the method find the cold pressure with its own margin.
         *
         * @param height of the highest point of the loop above the vessel
         * @return the step that asks for the final pressure
         */
        public FinalPressureStep staticHead(Length height) {
            return new FinalPressureStep(with(job, job.pressures().withStaticHead(height)));
        }

        /**
         * Takes the cold pressure at the vessel as it is; no margin is added.
         *
         * @param pressure gauge pressure
         * @return the step that asks for the final pressure
         */
        public FinalPressureStep coldPressure(GaugePressure pressure) {
            return new FinalPressureStep(with(job, job.pressures().withColdPressure(pressure)));
        }
    }

    /** Asks for the pressure when hot. */
    public static final class FinalPressureStep {

        private final SizingJob job;

        private FinalPressureStep(SizingJob job) {
            this.job = job;
        }

        /**
         * Lets the method find the final pressure with its own margin.
         *
         * @param setting gauge pressure at which the relief valve is set to open
         * @return the step that asks for the method
         */
        public MethodStep reliefValve(GaugePressure setting) {
            return new MethodStep(with(job, job.pressures().withReliefSetting(setting)));
        }

        /**
         * Stays below the relief setting by what the valve's instructions ask for, which beats the method's own margin.
         *
         * @param setting gauge pressure at which the relief valve is set to open
         * @param margin how far to stay below it
         * @return the step that asks for the method
         */
        public MethodStep reliefValve(GaugePressure setting, PressureDifference margin) {
            return new MethodStep(
                    with(job, job.pressures().withReliefSetting(setting).withReliefMargin(margin)));
        }

        /**
         * Takes the final pressure at the vessel as it is; no margin is taken off.
         *
         * @param pressure gauge pressure
         * @return the step that asks for the method
         */
        public MethodStep finalPressure(GaugePressure pressure) {
            return new MethodStep(with(job, job.pressures().withFinalPressure(pressure)));
        }
    }

    /** Asks for the method; before it, takes what may be left out. */
    public static final class MethodStep {

        private final SizingJob job;

        private MethodStep(SizingJob job) {
            this.job = job;
        }

        /**
         * The pressure of the air at the site; without it the method's own is used.
         *
         * @param air absolute pressure
         * @return this step with it
         */
        public MethodStep atmosphere(AbsolutePressure air) {
            return new MethodStep(with(job, job.pressures().withAtmosphere(air)));
        }

        /**
         * A gas charge other than the method's.
         *
         * @param charge gauge pressure with the water side empty
         * @return this step with it
         */
        public MethodStep preCharge(GaugePressure charge) {
            return new MethodStep(with(job, job.pressures().withPreCharge(charge)));
        }

        /**
         * Where the vessel stands, if not at the level of the relief valve or with an effect of the pump.
         *
         * @param where heights and pump effects
         * @return this step with it
         */
        public MethodStep place(VesselPlace where) {
            return new MethodStep(with(job, job.pressures().withPlace(where)));
        }

        /**
         * The job as given, to be put to several methods.
         *
         * @return the job
         */
        public SizingJob job() {
            return job;
        }

        /**
         * Chooses the method.
         *
         * @param method a published method or a house rule
         * @return the last step
         */
        public SizeStep by(Method method) {
            return new SizeStep(job, method);
        }
    }

    /** Everything is known. */
    public static final class SizeStep {

        private final SizingJob job;
        private final Method method;

        private SizeStep(SizingJob job, Method method) {
            this.job = job;
            this.method = method;
        }

        /**
         * Sizes the vessel.
         *
         * @return the answer
         * @throws OutOfRangeException if an input is outside the method, the pressures are out of order or there is nothing to
         *     take up
         * @throws MissingInputException if an open tank was asked for but the method needs pressures
         */
        public Sizing size() {
            return method.size(job);
        }
    }

    private static SizingJob with(SizingJob job, PressureInputs pressures) {
        return new SizingJob(job.loop(), job.vessel(), job.temperatures(), pressures);
    }
}
