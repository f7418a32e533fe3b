package org.ullage.record;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.io.Serializable;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.condition.SampleQuantity;
import org.ullage.condition.SampleValue;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * One measured value of the fluid as a file has it. The unit is always the one of the quantity; it stands in the file for people.
 * Immutable.
 *
 * @param quantity what was measured
 * @param number the number
 * @param unit its unit, none for pH, or null if not recorded
 * @param unknownFields what a file held beyond this release; kept and written back
 */
@Recorded
public record SampleReading(
        SampleQuantity quantity,
        Double number,
        @Nullable String unit,
        @JsonAnyGetter @JsonAnySetter Map<String, @Nullable Object> unknownFields)
        implements Serializable {

    /**
     * Checks and copies.
     *
     * @param quantity what was measured
     * @param number the number
     * @param unit its unit, none for pH, or null if not recorded
     * @param unknownFields what a file held beyond this release; kept and written back
     * @throws MissingInputException if quantity or number is missing
     * @throws OutOfRangeException if no instrument shows such a number, or the unit is not the one of the quantity
     */
    public SampleReading {
        Kept.present("quantity", quantity, "a reading");
        Kept.present("number", number, "a reading");
        unit = Kept.text(unit);
        unknownFields = Kept.fields(unknownFields);
        SampleValue value = new SampleValue(quantity, number);
        String wanted = Kept.text(value.quantity().unit());
        if (unit != null && !unit.equals(wanted)) {
            throw new OutOfRangeException(
                    "unit of " + quantity.word(),
                    PlainText.shortened(unit),
                    wanted == null ? "left out" : wanted,
                    "convert the number to it");
        }
        unit = wanted;
    }

    /**
     * Takes a value.
     *
     * @param value the value
     * @return the reading
     */
    public static SampleReading of(SampleValue value) {
        return new SampleReading(value.quantity(), value.number(), null, Map.of());
    }

    /**
     * The value.
     *
     * @return as the judgement of samples takes it
     */
    public SampleValue value() {
        return new SampleValue(quantity, number);
    }
}
