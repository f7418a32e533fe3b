package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.Temperature;

/**
 * The gas charge of one vessel at a visit. A reading under water pressure is the pressure of the loop and not the charge, so a
 * charge is taken
 * only with a plain yes or no to that question. Immutable; {@link #of} begins one.
 *
 * @param vessel name of the vessel in this record
 * @param waterSideAtZero whether the water side was isolated and drained to zero when the charge was read, or null if not recorded
 * @param found charge as it was found, or null if not recorded
 * @param gasTemperature temperature of the shell, which is that of the gas, or null if not recorded
 * @param left charge as it was left, at the same temperature; null if it was not changed, or null if not recorded
 * @param gasAdded gas that was added, or null if not recorded
 * @param waterAtGasValve whether water came out of the gas valve, or null if not recorded
 * @param gasValveLeaks whether the gas valve leaked, or null if not recorded
 * @param gauge gauge it was read on, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record ChargeCheck(
        String vessel,
        @Nullable Boolean waterSideAtZero,
        @Nullable GaugePressure found,
        @Nullable Temperature gasTemperature,
        @Nullable GaugePressure left,
        @Nullable Gas gasAdded,
        @Nullable Boolean waterAtGasValve,
        @Nullable Boolean gasValveLeaks,
        @Nullable GaugeNote gauge,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param vessel name of the vessel in this record
     * @param waterSideAtZero whether the water side was isolated and drained to zero when the charge was read, or null if not recorded
     * @param found charge as it was found, or null if not recorded
     * @param gasTemperature temperature of the shell, which is that of the gas, or null if not recorded
     * @param left charge as it was left, at the same temperature; null if it was not changed, or null if not recorded
     * @param gasAdded gas that was added, or null if not recorded
     * @param waterAtGasValve whether water came out of the gas valve, or null if not recorded
     * @param gasValveLeaks whether the gas valve leaked, or null if not recorded
     * @param gauge gauge it was read on, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if name of the vessel is missing, or a charge was found and it is not said whether the water
     *     side was at zero
     */
    public ChargeCheck {
        vessel = Kept.required("name of the vessel", vessel, "a check of the charge");
        unknownFields = Kept.fields(unknownFields);
        if (found != null) {
            Kept.present("whether the water side was at zero", waterSideAtZero, "a charge as found");
        }
    }

    /**
     * Begins a check.
     *
     * @param vessel name of the vessel in this record
     * @return a builder for the rest
     */
    public static ChargeCheckBuilder of(String vessel) {
        return new ChargeCheckBuilder(vessel);
    }

    /**
     * A copy to change.
     *
     * @return a builder that holds everything of this one
     */
    public ChargeCheckBuilder toBuilder() {
        return new ChargeCheckBuilder(this);
    }
}
