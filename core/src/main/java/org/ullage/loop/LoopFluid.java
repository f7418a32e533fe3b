package org.ullage.loop;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;

/**
 * A fluid as one model describes it. A ratio of two densities is always taken from one {@code LoopFluid}, so two models can
 * never be mixed in it. Implementations are immutable,
 * serializable and safe for many threads.
 *
 * <p>The methods on bare numbers are the calculation path: SI units, no allocation. The typed ones are for everyone else.
 */
public interface LoopFluid extends Serializable {

    /**
     * The fluid, with its concentration if it is a mixture.
     *
     * @return such as {@code water} or {@code propylene glycol 30 vol%}
     */
    String name();

    /**
     * The model that describes it, short.
     *
     * @return such as {@code IAPWS-IF97}
     */
    String model();

    /**
     * The document the model comes from.
     *
     * @return its source
     */
    Source source();

    /**
     * Whether this is plain water, for which alone many published expansion rules were written.
     *
     * @return true for water without additives that change its expansion
     */
    boolean isWater();

    /**
     * The lowest temperature the model answers for.
     *
     * @return inclusive lower limit
     */
    Temperature lowest();

    /**
     * The highest temperature the model answers for at any pressure.
     *
     * @return inclusive upper limit
     */
    Temperature highest();

    /**
     * Specific volume of the liquid on bare SI numbers. A model without pressure dependence ignores the pressure.
     *
     * @param kelvins temperature
     * @param pascals absolute pressure
     * @return cubic metres per kilogram, above zero and finite
     * @throws OutOfRangeException if the state is outside the model or is not liquid
     */
    double specificVolumeSi(double kelvins, double pascals);

    /**
     * Whether the specific volume depends on the pressure. One that does not is asked once where others are asked in rounds.
     *
     * @return false if {@link #specificVolumeSi} gives the same number at all pressures
     */
    default boolean isCompressible() {
        return true;
    }

    /**
     * The pressure at which the liquid begins to boil, on bare SI numbers. For a mixture this may be an estimate on the high
     * side; {@link #vapourPressureSource()} says so.
     *
     * @param kelvins temperature
     * @return absolute pressure in pascals
     * @throws OutOfRangeException if the temperature is outside the model
     */
    double vapourPressureSi(double kelvins);

    /**
     * Whether the fluid stays liquid at a state, on bare SI numbers. A model that can tell without the exact vapour pressure may
     * do so.
     *
     * @param kelvins temperature
     * @param pascals absolute pressure
     * @return whether the pressure is at or above the vapour pressure
     * @throws OutOfRangeException if the temperature is outside the model
     */
    default boolean isLiquidSi(double kelvins, double pascals) {
        return pascals >= vapourPressureSi(kelvins);
    }

    /**
     * Where the vapour pressure comes from.
     *
     * @return its source
     */
    Source vapourPressureSource();

    /**
     * Specific volume of the liquid.
     *
     * @param temperature within the model's range
     * @param pressure absolute, at or above the vapour pressure
     * @return the specific volume
     * @throws OutOfRangeException if the state is outside the model or is not liquid
     */
    default SpecificVolume specificVolume(Temperature temperature, AbsolutePressure pressure) {
        return SpecificVolume.ofSi(specificVolumeSi(temperature.si(), pressure.si()));
    }

    /**
     * The pressure at which the liquid begins to boil.
     *
     * @param temperature within the model's range
     * @return the vapour pressure
     * @throws OutOfRangeException if the temperature is outside the model
     */
    default AbsolutePressure vapourPressure(Temperature temperature) {
        return AbsolutePressure.ofSi(vapourPressureSi(temperature.si()));
    }
}
