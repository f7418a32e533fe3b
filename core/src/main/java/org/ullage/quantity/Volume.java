package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A volume. May be negative, as the net expansion of a loop that contracts is. Immutable.
 */
public final class Volume extends AdditiveQuantity<Volume, Volume> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Volume, Volume> KIND = new Kind<>(
            "volume",
            Kind.Range.ANY,
            Volume::new,
            Units.LITRE,
            Units.US_GALLON,
            List.of(Units.CUBIC_METRE, Units.LITRE, Units.US_GALLON, Units.CUBIC_FOOT));

    @JsonIgnore
    private Volume(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of litres.
     *
     * @param number the number of litres
     * @return the volume
     * @throws OutOfRangeException if the number is not allowed for a volume
     */
    public static Volume litres(double number) {
        return KIND.of(number, Units.LITRE);
    }

    /**
     * Makes one from a number of cubic metres.
     *
     * @param number the number of cubic metres
     * @return the volume
     * @throws OutOfRangeException if the number is not allowed for a volume
     */
    public static Volume cubicMetres(double number) {
        return KIND.of(number, Units.CUBIC_METRE);
    }

    /**
     * Makes one from a number of US gallons.
     *
     * @param number the number of US gallons
     * @return the volume
     * @throws OutOfRangeException if the number is not allowed for a volume
     */
    public static Volume gallons(double number) {
        return KIND.of(number, Units.US_GALLON);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the volume
     * @throws OutOfRangeException if the number is not allowed for a volume
     */
    public static Volume of(double number, Unit<Volume> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#CUBIC_METRE}.
     *
     * @param si the SI value
     * @return the volume
     * @throws OutOfRangeException if the value is not allowed for a volume
     */
    public static Volume ofSi(double si) {
        return new Volume(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 3000 gal}
     * @return the volume
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a volume
     */
    @JsonCreator
    public static Volume parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Volume, Volume> kind() {
        return KIND;
    }

    @Override
    Volume make(double si) {
        return new Volume(si);
    }
}
