package org.ullage.record;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;

/**
 * Fills in a check of the charge step by step. Not for many threads. Begin one with {@link ChargeCheck#of} or {@link
 * ChargeCheck#toBuilder}.
 */
public final class ChargeCheckBuilder {

    private final String vessel;
    private @Nullable Boolean waterSideAtZero;
    private @Nullable GaugePressure found;
    private @Nullable Temperature gasTemperature;
    private @Nullable GaugePressure left;
    private @Nullable Gas gasAdded;
    private @Nullable Boolean waterAtGasValve;
    private @Nullable Boolean gasValveLeaks;
    private @Nullable GaugeNote gauge;
    private Map<String, @Nullable Object> unknownFields = Map.of();

    ChargeCheckBuilder(String vessel) {
        this.vessel = vessel;
    }

    ChargeCheckBuilder(ChargeCheck begun) {
        this.vessel = begun.vessel();
        this.waterSideAtZero = begun.waterSideAtZero();
        this.found = begun.found();
        this.gasTemperature = begun.gasTemperature();
        this.left = begun.left();
        this.gasAdded = begun.gasAdded();
        this.waterAtGasValve = begun.waterAtGasValve();
        this.gasValveLeaks = begun.gasValveLeaks();
        this.gauge = begun.gauge();
        this.unknownFields = begun.unknownFields();
    }

    /**
     * Whether the water side was isolated and drained to zero when the charge was read.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder waterSideAtZero(@Nullable Boolean value) {
        waterSideAtZero = value;
        return this;
    }

    /**
     * Charge as it was found.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder found(@Nullable GaugePressure value) {
        found = value;
        return this;
    }

    /**
     * Temperature of the shell, which is that of the gas.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder gasTemperature(@Nullable Temperature value) {
        gasTemperature = value;
        return this;
    }

    /**
     * Charge as it was left, at the same temperature; null if it was not changed.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder left(@Nullable GaugePressure value) {
        left = value;
        return this;
    }

    /**
     * Gas that was added.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder gasAdded(@Nullable Gas value) {
        gasAdded = value;
        return this;
    }

    /**
     * Whether water came out of the gas valve.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder waterAtGasValve(@Nullable Boolean value) {
        waterAtGasValve = value;
        return this;
    }

    /**
     * Whether the gas valve leaked.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder gasValveLeaks(@Nullable Boolean value) {
        gasValveLeaks = value;
        return this;
    }

    /**
     * Gauge it was read on.
     *
     * @param value as it was found, or null if not recorded
     * @return this builder
     */
    public ChargeCheckBuilder gauge(@Nullable GaugeNote value) {
        gauge = value;
        return this;
    }

    /**
     * Closes the record.
     *
     * @return a check of the charge
     * @throws IllegalArgumentException if something in it is missing or out of range
     */
    public ChargeCheck build() {
        return new ChargeCheck(
                vessel,
                waterSideAtZero,
                found,
                gasTemperature,
                left,
                gasAdded,
                waterAtGasValve,
                gasValveLeaks,
                gauge,
                unknownFields);
    }
}
