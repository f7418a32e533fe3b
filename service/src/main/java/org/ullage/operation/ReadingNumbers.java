package org.ullage.operation;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.Map;
import org.ullage.loop.LoopFluid;
import org.ullage.vessel.GasLaw;

/**
 * The equation behind {@link TwoReadings} on bare SI numbers, pressures absolute: contents = water taken in / net expansion of one
 * volume of contents.
 */
final class ReadingNumbers implements Serializable {

    private static final long serialVersionUID = 1L;

    private final EnumMap<ReadingInput, Double> values;
    private final LoopFluid fluid;
    private final double alpha;

    /**
     * @param alpha linear expansion coefficient of the pipe, 1/K
     */
    ReadingNumbers(Map<ReadingInput, Double> values, LoopFluid fluid, double alpha) {
        this.values = new EnumMap<>(values);
        this.fluid = fluid;
        this.alpha = alpha;
    }

    double of(ReadingInput input) {
        return values.getOrDefault(input, Double.NaN);
    }

    /** The same with one value moved. */
    ReadingNumbers shifted(ReadingInput input, double by) {
        Map<ReadingInput, Double> moved = new EnumMap<>(values);
        moved.merge(input, by, Double::sum);
        return new ReadingNumbers(moved, fluid, alpha);
    }

    /** Water that went into the vessel: V_n p_0 (1/p_1 - 1/p_2). */
    double waterTakenIn() {
        return of(ReadingInput.NOMINAL_VOLUME)
                / GasLaw.volumePerWater(
                        of(ReadingInput.CHARGE), of(ReadingInput.COLD_PRESSURE), of(ReadingInput.HOT_PRESSURE));
    }

    double coldSpecificVolume() {
        return fluid.specificVolumeSi(of(ReadingInput.COLD_TEMPERATURE), of(ReadingInput.COLD_PRESSURE));
    }

    double hotSpecificVolume() {
        return fluid.specificVolumeSi(of(ReadingInput.HOT_TEMPERATURE), of(ReadingInput.HOT_PRESSURE));
    }

    double rise() {
        return of(ReadingInput.HOT_TEMPERATURE) - of(ReadingInput.COLD_TEMPERATURE);
    }

    /** Net expansion of one volume of contents: v_2/v_1 - 1 - 3 alpha (t_2 - t_1). */
    double netExpansion() {
        return hotSpecificVolume() / coldSpecificVolume() - 1 - 3 * alpha * rise();
    }

    double contents() {
        return waterTakenIn() / netExpansion();
    }
}
