package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * Volume per mass, above zero. Immutable.
 */
public final class SpecificVolume extends Quantity<SpecificVolume, SpecificVolume> {

    private static final long serialVersionUID = 1L;

    private static final Kind<SpecificVolume, SpecificVolume> KIND = new Kind<>(
            "specific volume",
            Kind.Range.POSITIVE,
            SpecificVolume::new,
            Units.CUBIC_METRE_PER_KILOGRAM,
            Units.CUBIC_FOOT_PER_POUND,
            List.of(Units.CUBIC_METRE_PER_KILOGRAM, Units.LITRE_PER_KILOGRAM, Units.CUBIC_FOOT_PER_POUND));

    @JsonIgnore
    private SpecificVolume(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of cubic metres per kilogram.
     *
     * @param number the number of cubic metres per kilogram
     * @return the specific volume
     * @throws OutOfRangeException if the number is not allowed for a specific volume
     */
    public static SpecificVolume cubicMetresPerKilogram(double number) {
        return KIND.of(number, Units.CUBIC_METRE_PER_KILOGRAM);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the specific volume
     * @throws OutOfRangeException if the number is not allowed for a specific volume
     */
    public static SpecificVolume of(double number, Unit<SpecificVolume> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#CUBIC_METRE_PER_KILOGRAM}.
     *
     * @param si the SI value
     * @return the specific volume
     * @throws OutOfRangeException if the value is not allowed for a specific volume
     */
    public static SpecificVolume ofSi(double si) {
        return new SpecificVolume(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 0.01602 ft3/lb}
     * @return the specific volume
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a specific volume
     */
    @JsonCreator
    public static SpecificVolume parse(String text) {
        return KIND.parse(text);
    }

    /**
     * The mass of one unit of volume.
     *
     * @return one divided by this specific volume
     */
    public Density density() {
        return Density.ofSi(1 / si());
    }

    @Override
    Kind<SpecificVolume, SpecificVolume> kind() {
        return KIND;
    }
}
